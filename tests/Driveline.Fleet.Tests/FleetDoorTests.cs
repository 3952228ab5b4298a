using Driveline.Fleet.Web;
using Microsoft.AspNetCore.Http;

namespace Driveline.Fleet.Tests;

public class FleetDoorTests
{
    [Theory]
    [InlineData(null, true, "localhost", 200)]
    [InlineData(null, true, "fleet.example", 421)]
    [InlineData(null, false, "fleet.example", 403)]
    [InlineData("", false, "localhost", 403)]
    [InlineData("a key", false, "fleet.example", 401)]
    public async Task Door_RequestWithoutAKey_ComesInOnLoopbackOnly(string? key, bool isLoopback, string host, int status)
    {
        var context = new DefaultHttpContext();
        context.Request.Host = new HostString(host);
        context.Request.Path = "/drivelines/west-1";
        bool isIn = false;
        await new FleetDoor(key, isLoopback).PassAsync(context, _ =>
        {
            isIn = true;
            return Task.CompletedTask;
        });
        Assert.Equal((status, status == StatusCodes.Status200OK), (context.Response.StatusCode, isIn));
    }
}
