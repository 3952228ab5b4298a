using System.Security.Cryptography;
using System.Text;
using Microsoft.AspNetCore.Http;

namespace Driveline.Fleet.Web;

/// <summary>Lets in who has the key: in the header X-Api-Key, or as the password of a browser.</summary>
/// <remarks>
/// On loopback without a key all may come in, but only under a name of loopback, so that no page of somebody else's reaches it by a name of
/// its own. Beyond loopback nobody comes in without a key, whatever the set-up let through.
/// </remarks>
internal sealed class FleetDoor(string? key, bool isLoopback)
{
    private static readonly string[] OwnNames = ["localhost", "127.0.0.1", "[::1]"];

    private readonly byte[]? expected = string.IsNullOrEmpty(key) ? null : SHA256.HashData(Encoding.UTF8.GetBytes(key));

    public Task PassAsync(HttpContext context, RequestDelegate next)
    {
        HttpRequest request = context.Request;
        if (request.Path == "/health")
        {
            return next(context);
        }

        if (expected is null)
        {
            return !isLoopback
                ? FleetJson.RefuseAsync(context, StatusCodes.Status403Forbidden, new FleetRefusal("ApiKey", "set beyond loopback", "none"))
                : OwnNames.Contains(request.Host.Host) ? next(context)
                : FleetJson.RefuseAsync(context, StatusCodes.Status421MisdirectedRequest,
                    new FleetRefusal("host", "a name of loopback", request.Host.Host));
        }

        if (IsKey(request))
        {
            return next(context);
        }

        context.Response.Headers.WWWAuthenticate = "Basic realm=\"fleet\"";
        return FleetJson.RefuseAsync(context, StatusCodes.Status401Unauthorized,
            new FleetRefusal("X-Api-Key", "the key of this fleet", request.Headers.ContainsKey("X-Api-Key") ? "another one" : "none"));
    }

    // Of equal length and compared in constant time, so that the time tells nothing of the key.
    private bool IsKey(HttpRequest request)
    {
        string? given = request.Headers["X-Api-Key"];
        if (given is null && request.Headers.Authorization.ToString() is { } basic && basic.StartsWith("Basic ", StringComparison.Ordinal))
        {
            byte[] room = new byte[basic.Length];
            if (Convert.TryFromBase64String(basic[6..], room, out int length))
            {
                string pair = Encoding.UTF8.GetString(room, 0, length);
                given = pair[(pair.IndexOf(':', StringComparison.Ordinal) + 1)..];
            }
        }

        return given is not null && CryptographicOperations.FixedTimeEquals(SHA256.HashData(Encoding.UTF8.GetBytes(given)), expected);
    }
}
