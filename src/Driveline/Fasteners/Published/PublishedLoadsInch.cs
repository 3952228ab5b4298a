using Driveline.Provenance;

namespace Driveline.Fasteners;

/// <summary>Tensile and proof loads of SAE J429 as printed, in lbf.</summary>
internal static class PublishedLoadsInch
{
    public const string Unit = "lbf";

    private static readonly Basis Scan =
        Basis.CommonPractice("SAE J429, proof and tensile loads, edition not stated").ReadVia("a scanned load table in a public archive");

    private static readonly Basis Memory = Basis.FromMemory("SAE J429 proof and tensile loads");

    public static readonly PublishedLoad[] All =
    [
        new("SAE 2", "1/4-20 UNC", 2350, Scan, 1750, Scan),
        new("SAE 5", "1/4-20 UNC", 3800, Scan, 2700, Scan),
        new("SAE 8", "1/4-20 UNC", 4750, Scan, 3800, Scan),
        new("SAE 5", "5/16-18 UNC", 6300, Scan, 4450, Scan),
        new("SAE 2", "3/8-16 UNC", 5750, Scan, 4250, Scan),
        new("SAE 5", "3/8-16 UNC", 9300, Scan, 6600, Scan),
        new("SAE 8", "3/8-16 UNC", 11600, Scan, 9300, Scan),
        new("SAE 2", "7/16-14 UNC", 7850, Memory, 5850, Memory),
        new("SAE 5", "7/16-14 UNC", 12800, Scan, 9050, Scan),
        new("SAE 8", "7/16-14 UNC", 15900, Scan, 12800, Scan),
        new("SAE 2", "1/2-13 UNC", 10500, Memory, 7800, Memory),
        new("SAE 5", "1/2-13 UNC", 17000, Memory, 12100, Memory),
        new("SAE 8", "1/2-13 UNC", 21300, Memory, 17000, Memory),
        new("SAE 2", "9/16-12 UNC", 13500, Scan, 10000, Scan),
        new("SAE 8", "9/16-12 UNC", 27300, Scan, 21800, Scan),
        new("SAE 2", "5/8-11 UNC", 16700, Scan, 12400, Scan),
        new("SAE 5", "5/8-11 UNC", 27100, Scan, 19200, Scan),
        new("SAE 8", "5/8-11 UNC", 33900, Scan, 27100, Scan),
        new("SAE 2", "3/4-10 UNC", 24700, Scan, 18400, Scan),
        new("SAE 8", "3/4-10 UNC", 50100, Scan, 40100, Scan),
        new("SAE 8", "7/8-9 UNC", 69300, Scan, 55400, Scan),
        new("SAE 2", "1-8 UNC", 36400, Scan, 20000, Scan),
        new("SAE 5", "1-8 UNC", 72700, Scan, 51500, Misprint("51300 lbf")),
        new("SAE 8", "1-8 UNC", 90900, Scan, 72700, Scan),
        new("SAE 2", "1-1/8-7 UNC", 45800, Scan, 25200, Scan),
        new("SAE 5", "1-1/8-7 UNC", 80100, Scan, 56500, Scan),
        new("SAE 8", "1-1/8-7 UNC", 114400, Scan, 91600, Scan),
        new("SAE 2", "1-1/4-7 UNC", 58100, Scan, 32000, Scan),
        new("SAE 5", "1-1/4-7 UNC", 101700, Scan, 71700, Scan),
        new("SAE 8", "1-1/4-7 UNC", 145400, Scan, 116300, Scan),
        new("SAE 5", "1-3/8-6 UNC", 121300, Scan, 85500, Misprint("86500 lbf")),
        new("SAE 8", "1-3/8-6 UNC", 173200, Scan, 138600, Scan),
        new("SAE 2", "1-1/2-6 UNC", 84300, Scan, 46400, Scan),
        new("SAE 5", "1-1/2-6 UNC", 147500, Scan, 104000, Scan),
        new("SAE 8", "1-1/2-6 UNC", 210800, Misprint("210900 lbf"), 168600, Scan),
        new("SAE 2", "1/4-28 UNF", 2700, Scan, 2000, Misprint("4000 lbf")),
        new("SAE 5", "1/4-28 UNF", 4350, Scan, 3100, Scan),
        new("SAE 8", "1/4-28 UNF", 5450, Scan, 4350, Scan),
        new("SAE 2", "5/16-24 UNF", 4300, Memory, 3200, Memory),
        new("SAE 5", "5/16-24 UNF", 6950, Memory, 4900, Memory),
        new("SAE 8", "5/16-24 UNF", 8700, Memory, 6950, Memory),
        new("SAE 2", "3/8-24 UNF", 6500, Scan, 4800, Scan),
        new("SAE 5", "3/8-24 UNF", 10500, Scan, 7450, Scan),
        new("SAE 2", "7/16-20 UNF", 8800, Memory, 6550, Memory),
        new("SAE 5", "7/16-20 UNF", 14200, Memory, 10100, Memory),
        new("SAE 8", "7/16-20 UNF", 17800, Memory, 14200, Memory),
        new("SAE 2", "1/2-20 UNF", 11800, Memory, 8800, Memory),
        new("SAE 5", "1/2-20 UNF", 19200, Memory, 13600, Memory),
        new("SAE 8", "1/2-20 UNF", 24000, Memory, 19200, Memory),
        new("SAE 2", "9/16-18 UNF", 15000, Memory, 11200, Memory),
        new("SAE 5", "9/16-18 UNF", 24400, Memory, 17300, Memory),
        new("SAE 8", "9/16-18 UNF", 30400, Memory, 24400, Memory),
        new("SAE 2", "5/8-18 UNF", 18900, Memory, 14100, Memory),
        new("SAE 5", "5/8-18 UNF", 30700, Memory, 21800, Memory),
        new("SAE 8", "5/8-18 UNF", 38400, Memory, 30700, Memory),
        new("SAE 2", "3/4-16 UNF", 27600, Memory, 20500, Memory),
        new("SAE 5", "3/4-16 UNF", 44800, Memory, 31700, Memory),
        new("SAE 8", "3/4-16 UNF", 56000, Memory, 44800, Memory),
        new("SAE 2", "7/8-14 UNF", 30500, Memory, 16800, Memory),
        new("SAE 5", "7/8-14 UNF", 61100, Memory, 43300, Memory),
        new("SAE 8", "7/8-14 UNF", 76400, Memory, 61100, Memory),
        new("SAE 2", "1-12 UNF", 39800, Memory, 21900, Memory),
        new("SAE 5", "1-12 UNF", 79600, Memory, 56400, Memory),
        new("SAE 8", "1-12 UNF", 99400, Memory, 79600, Memory),
        new("SAE 2", "1-1/8-12 UNF", 51400, Memory, 28200, Memory),
        new("SAE 5", "1-1/8-12 UNF", 89900, Memory, 63300, Memory),
        new("SAE 8", "1-1/8-12 UNF", 128400, Memory, 102700, Memory),
        new("SAE 2", "1-1/4-12 UNF", 64400, Memory, 35400, Memory),
        new("SAE 5", "1-1/4-12 UNF", 112700, Memory, 79400, Memory),
        new("SAE 8", "1-1/4-12 UNF", 161000, Memory, 128800, Memory),
        new("SAE 2", "1-3/8-12 UNF", 78900, Memory, 43400, Memory),
        new("SAE 5", "1-3/8-12 UNF", 138100, Memory, 97300, Memory),
        new("SAE 8", "1-3/8-12 UNF", 197200, Memory, 157800, Memory),
        new("SAE 2", "1-1/2-12 UNF", 94900, Memory, 52200, Memory),
        new("SAE 5", "1-1/2-12 UNF", 166000, Memory, 117000, Memory),
        new("SAE 8", "1-1/2-12 UNF", 237200, Memory, 189700, Memory),
    ];

    private static Basis Misprint(string scanned) =>
        Basis.CommonPractice("SAE J429 loads; the scan prints " + scanned + ", against area × stress");
}
