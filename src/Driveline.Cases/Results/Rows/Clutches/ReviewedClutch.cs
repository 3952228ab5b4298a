using Driveline.Chains;
using Driveline.Clutches;

namespace Driveline.Cases.Results;

/// <summary>A review of a clutch with the service steps shown beside it.</summary>
internal sealed class ReviewedClutch
{
    public ReviewedClutch(ClutchReview review, IReadOnlyList<ServiceProcedure> procedures)
    {
        Review = review;
        Procedures = procedures;
    }

    public ClutchReview Review { get; }

    public IReadOnlyList<ServiceProcedure> Procedures { get; }
}
