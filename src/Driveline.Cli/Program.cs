using System.Text;
using Driveline.Cli;

Console.OutputEncoding = new UTF8Encoding(false);
bool isTerminal = !Console.IsOutputRedirected && Environment.GetEnvironmentVariable("NO_COLOR") is null or "";
return Cli.Run(args, Console.In, Console.Out, Console.Error, isTerminal);
