using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.Advice;

/// <summary>A question of the catalogue: its possible answers, where it is found out, and how long that takes.</summary>
public sealed class FactQuestion
{
    private static readonly IReadOnlyList<Caution> AtSeat =
        [Caution.BystandersAway, Caution.GuardsOn, Caution.HotClutch, Caution.HotClutchDryGrass, Caution.StopAndKeyOut];

    private static readonly IReadOnlyList<Caution> AtMachine =
    [
        Caution.StopAndKeyOut, Caution.RotorCoasts, Caution.BlockRaisedDeck, Caution.JammedDriveSpringsBack, Caution.SupportHalfShafts,
    ];

    internal FactQuestion(string code, CheckPlace place, double minutes, IReadOnlyList<string> answers)
    {
        Code = code;
        Place = place;
        Minutes = minutes;
        Answers = answers;
    }

    /// <summary>Every question, in the order of the catalogue.</summary>
    public static IReadOnlyList<FactQuestion> All => LikelihoodTable.Held.Questions;

    /// <summary>Stable code, e.g. "hubTurns".</summary>
    public string Code { get; }

    /// <summary>Code of its text, e.g. "ask.hubTurns".</summary>
    public string TextCode => "ask." + Code;

    /// <summary>Codes of the possible answers; "notKnown" is always possible beside them.</summary>
    public IReadOnlyList<string> Answers { get; }

    /// <summary>Where it is found out.</summary>
    public CheckPlace Place { get; }

    /// <summary>Minutes it takes, common practice.</summary>
    public double Minutes { get; }

    /// <summary>The cautions that go with finding it out.</summary>
    public IReadOnlyList<Caution> Cautions => Place switch
    {
        CheckPlace.Desk => [],
        CheckPlace.Seat => AtSeat,
        _ => AtMachine,
    };

    /// <summary>The question of that code.</summary>
    /// <exception cref="ArgumentException">There is none; the message lists the codes there are.</exception>
    public static FactQuestion Get(string code) => Find(code)
        ?? throw new ArgumentException(
            "'" + code + "' is not a question held here; held: " + string.Join(", ", All.Select(q => q.Code)) + ".", nameof(code));

    /// <summary>The question of that code; null when there is none.</summary>
    public static FactQuestion? Find(string code) => LikelihoodTable.Held.Find(Guard.NotNull(code, nameof(code)));

    /// <inheritdoc/>
    public override string ToString() => Code;
}
