namespace Driveline.Reports.Documents;

/// <summary>The style of every page: readable on a phone, on a screen and on paper, and nothing is ever cut off.</summary>
internal static class HtmlStyle
{
    public const string Css =
        ":root{color-scheme:light dark}"
        + "body{font:16px/1.5 Arial,Helvetica,sans-serif;color:#1c1c22;background:#fff;max-width:62rem;margin:2rem auto;padding:0 1rem;"
        + "overflow-wrap:break-word}"
        + "h1{font-size:1.6rem;margin-bottom:.4rem}h2{font-size:1.15rem;margin-top:1.8rem;border-bottom:1px solid #c9c9d1}"
        + ".lead{font-size:1.25rem;font-weight:bold;border-left:.5rem solid #5a5a66;padding:.4rem .8rem;background:#f1f1f4}"
        + ".good{border-color:#1e8a62;background:#e4f3ec}.careful{border-color:#b35900;background:#fbf3e8}"
        + ".bad{border-color:#b3261e;background:#fbe3e0}"
        + "table{border-collapse:collapse;max-width:100%}th,td{padding:.25rem .8rem;text-align:right;border-bottom:1px solid #dcdce2}"
        + "th:first-child,td:first-child{text-align:left}li{margin:.25rem 0}figure{margin:0}svg{display:block;max-width:100%;height:auto}"
        + "@media screen and (max-width:40rem){body{margin:1rem auto;padding:0 .6rem}ol,ul{padding-left:1.4rem}"
        + "th,td{padding:.25rem .3rem;font-size:.85rem}td:first-child,th:first-child{overflow-wrap:anywhere}}"
        + "@media screen and (prefers-color-scheme:dark){body{color:#e6e6ec;background:#17171c}.lead{background:#2a2620}"
        + "h2{border-color:#4a4a55}th,td{border-color:#3a3a44}}"
        + "@media print{@page{margin:15mm}body{max-width:none;margin:0;padding:0;font-size:11pt}"
        + "h1,h2{break-after:avoid}figure,table,tr,li,.lead{break-inside:avoid}thead{display:table-header-group}"
        + "p,li{orphans:3;widows:3}.lead,svg{-webkit-print-color-adjust:exact;print-color-adjust:exact}}";
}
