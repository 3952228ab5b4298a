using System.Globalization;
using Driveline.Fleet.Cluster;

if (args.Length is < 2 or > 4)
{
    Console.Error.WriteLine("usage: Driveline.Fleet.Cluster TOOL DRIVELINES [BATCHES [SAMPLES]]   (TOOL: path of Driveline.Cli.dll)");
    return 2;
}

int Number(int at, int other) => args.Length > at ? int.Parse(args[at], CultureInfo.InvariantCulture) : other;
var run = new ClusterRun(args[0], Number(1, 0), Number(2, 24), Number(3, 50));
bool isFleetGood = await run.RunAsync();
bool isStudyGood = await new StudyRun(args[0]).RunAsync();
int passed = (isFleetGood ? 1 : 0) + (isStudyGood ? 1 : 0);
Console.WriteLine(FormattableString.Invariant($"{passed} passed, {2 - passed} failed, 0 skipped"));
return passed == 2 ? 0 : 1;
