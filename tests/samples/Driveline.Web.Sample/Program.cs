using Driveline.Web.Sample;

await using WebApplication app = AdviserHost.Build(args);
await app.RunAsync();
