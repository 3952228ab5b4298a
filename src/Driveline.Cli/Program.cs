using System.Text;
using Driveline.Cli;

Console.OutputEncoding = new UTF8Encoding(false);
bool isTerminal = !Console.IsOutputRedirected;
bool isColoured = isTerminal && Environment.GetEnvironmentVariable("NO_COLOR") is null or "";
return Cli.Run(args, Console.In, Console.Out, Console.Error, isColoured, isTerminal ? Columns() : Cli.ColumnsOfAFile);

static int Columns()
{
    try
    {
        return Console.WindowWidth > 1 ? Console.WindowWidth - 1 : Cli.ColumnsOfAFile;
    }
    catch (IOException)
    {
        return Cli.ColumnsOfAFile;
    }
}
