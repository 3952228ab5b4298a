using System.Text.Json;
using Driveline.Fasteners;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;

namespace Driveline.Cases.Results;

/// <summary>Writes what a bolt of a grade carries as one JSON object. Areas in mm², loads in N.</summary>
/// <remarks>
/// Loads are stress times area, not rounded; under "published" stand the printed cells, else the loads by the standard's rounding.
/// </remarks>
public static class StrengthJson
{
    /// <summary>Writes the strength to a stream, indented; the stream stays open.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static void Write(BoltStrength strength, Stream stream) => JsonDocuments.Write(stream, json => Write(strength, json));

    /// <summary>Writes the strength as a value.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static void Write(BoltStrength strength, Utf8JsonWriter json)
    {
        Guard.NotNull(strength, nameof(strength));
        Guard.NotNull(json, nameof(json));
        ScrewThread thread = strength.Thread;
        ShearBolt bolt = ShearBolt.Of(thread, strength.Grade);
        ForceBand shank = ShearPlane.Of(bolt.With(PlaneThrough.Shank)).Load;
        ForceBand threaded = ShearPlane.Of(bolt.With(PlaneThrough.Thread)).Load;
        json.WriteStartObject();
        json.WriteString("thread", thread.Designation);
        json.WriteString("grade", strength.Grade.Designation);
        json.WriteNumber("stressAreaMm2", thread.StressArea.SquareMillimeters);
        json.WriteNumber("rootAreaMm2", thread.RootArea.SquareMillimeters);
        json.WriteNumber("shankAreaMm2", thread.ShankArea.SquareMillimeters);
        JsonNumbers.Number(json, "proofLoadN", strength.Strength.ProofStress?.Pascals * thread.StressArea.SquareMeters);
        JsonNumbers.Band(json, "tensileLoadN", strength.TensileLoad);
        json.WriteStartObject("shearLoadPerPlaneN");
        JsonNumbers.Band(json, "shank", shank);
        JsonNumbers.Band(json, "thread", threaded);
        json.WriteEndObject();
        json.WriteStartObject("published");
        JsonNumbers.Number(json, "proofLoadN", strength.ProofLoad?.Newtons);
        json.WriteNumber("tensileLoadN", strength.MinimumTensileLoad.Newtons);
        json.WriteString("basis", strength.MinimumTensileLoadBasis.ToString());
        json.WriteEndObject();
        Basis[] sources = Sources(strength, shank, threaded);
        json.WriteString("weakestBasis", Basis.Weakest(sources).Kind.ToString());
        json.WriteStartArray("sources");
        foreach (Basis source in sources)
        {
            json.WriteStringValue(source.ToString());
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    /// <summary>Every basis the numbers rest on, each once, the weakest first.</summary>
    internal static Basis[] Sources(BoltStrength strength, ForceBand shank, ForceBand threaded)
    {
        var all = new List<Basis> { strength.Thread.AreaBasis, strength.Thread.RootAreaBasis, strength.Strength.Basis,
            strength.MinimumTensileLoadBasis };
        foreach (BandBasis band in new[] { strength.TensileLoad.Basis, shank.Basis, threaded.Basis })
        {
            all.AddRange([band.Low, band.Expected, band.High]);
        }

        return [.. all.Distinct().OrderBy(b => b.Kind)];
    }
}
