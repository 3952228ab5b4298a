namespace Driveline.Reports.Documents;

/// <summary>The style of every page and fragment: readable on a phone, on a dark screen and on paper; nothing is cut off.</summary>
internal static class HtmlStyle
{
    /// <summary>For a report inside a caller's page: its font, its size, its colour scheme stay the caller's.</summary>
    public const string Fragment =
        ".dl-report{container-type:inline-size;overflow-wrap:break-word}"
        + ".dl-report h1{font-size:1.6em;line-height:1.25;margin:.4em 0}"
        + ".dl-report h2{font-size:1.15em;margin:1.6em 0 .5em;border-bottom:1px solid #c9c9d1}"
        + ".dl-lead{font-size:1.2em;font-weight:bold;border-left:.45em solid #5a5a66;padding:.45em .75em;margin:.8em 0;"
        + "background:#f1f1f4;background:light-dark(#f1f1f4,#26262d)}"
        + ".dl-good{border-color:#1e7a58;background:#e4f3ec;background:light-dark(#e4f3ec,#12352a)}"
        + ".dl-careful{border-color:#9c4f00;background:#fbf1e4;background:light-dark(#fbf1e4,#3b2a14)}"
        + ".dl-bad{border-color:#b3261e;background:#fbe3e0;background:light-dark(#fbe3e0,#452020)}"
        + ".dl-word{display:inline-block;padding:0 .5em;margin-right:.3em;border-radius:.2em;color:#fff;background:#5a5a66;"
        + "text-transform:uppercase;font-size:.8em;letter-spacing:.04em}"
        + ".dl-good .dl-word{background:#1e7a58}.dl-careful .dl-word{background:#9c4f00}.dl-bad .dl-word{background:#b3261e}"
        + ".dl-danger{color:#a0201a;color:light-dark(#a0201a,#ff9d94)}.dl-warning{color:#8a4500;color:light-dark(#8a4500,#f3b875)}"
        + ".dl-report li{margin:.3em 0}.dl-report ul,.dl-report ol{padding-left:1.8em}"
        + ".dl-steps label{display:flex;gap:.5em}.dl-steps input{flex:none;width:1.1em;height:1.1em;margin:.2em 0}"
        + ".dl-report table{border-collapse:collapse;max-width:100%}"
        + ".dl-report th,.dl-report td{padding:.25em .7em;text-align:right;vertical-align:top;border-bottom:1px solid #dcdce2;"
        + "border-bottom:1px solid light-dark(#dcdce2,#44444f)}"
        + ".dl-report tr>:first-child,.dl-report .dl-words{text-align:left}.dl-report tbody th{font-weight:normal}"
        + ".dl-report figure{margin:1em 0;max-width:62em}.dl-report figcaption{font-size:.85em}"
        + ".dl-at-narrow{display:none}.dl-pic{display:block;max-width:100%;height:auto}"
        + ".dl-report math{font-size:1.1em}.dl-sum{padding:.1em 0 .1em 1em;border-left:2px solid #c9c9d1;margin:.5em 0}"
        + ".dl-sum math{margin-right:.3em}.dl-note{margin:.1em 0 0;font-size:.85em}"
        + ".dl-sign{display:flex;flex-wrap:wrap;gap:1em 2em;margin:2.5em 0 1em}"
        + ".dl-sign div{flex:1 1 12em;border-top:1px solid;padding-top:.2em}"
        + ".dl-sr{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}"
        + ".dl-wide tbody th{min-width:9em}"
        + "@container (max-width:58em){.dl-report .dl-wide th,.dl-report .dl-wide td{padding:.25em .35em;font-size:.85em}}"
        + "@container (max-width:40em){.dl-at-wide{display:none}.dl-at-narrow{display:block}.dl-at-narrow .dl-pic{margin:auto}"
        + ".dl-report th,.dl-report td{padding:.25em .3em;font-size:.9em}.dl-report tr>:first-child{overflow-wrap:anywhere}"
        + ".dl-wide thead{display:none}.dl-wide,.dl-wide tbody,.dl-wide tr{display:block}"
        + ".dl-report .dl-wide tbody th{display:block;font-weight:bold;border:0;padding-top:.6em}"
        + ".dl-report .dl-wide td{display:flex;justify-content:space-between;gap:1em;text-align:right}"
        + ".dl-wide td::before{content:attr(data-head);text-align:left}.dl-report .dl-wide td.dl-words{display:block;text-align:left}"
        + ".dl-wide td.dl-words::before{content:attr(data-head) ' – '}}"
        + "@media print{.dl-report h1,.dl-report h2{break-after:avoid}.dl-report figure,.dl-report table,.dl-report tr,.dl-report li,"
        + ".dl-lead,.dl-sum,.dl-sign{break-inside:avoid}.dl-sheet{break-before:page}.dl-report h1+.dl-sheet{break-before:auto}"
        + ".dl-report thead{display:table-header-group}"
        + ".dl-report p,.dl-report li{orphans:3;widows:3}"
        + ".dl-lead,.dl-word{-webkit-print-color-adjust:exact;print-color-adjust:exact}}";

    /// <summary>For a page of its own.</summary>
    public const string Css =
        "@supports(color:light-dark(#000,#fff)){.dl-page{color-scheme:light dark}}"
        + ".dl-page{background:#fff;background:light-dark(#fff,#17171c)}"
        + ".dl-body{font:16px/1.5 Arial,Helvetica,sans-serif;color:#1c1c22;color:light-dark(#1c1c22,#ececf2);"
        + "max-width:62rem;margin:1.5rem auto;padding:0 1rem}"
        + ".dl-head dl{display:flex;flex-wrap:wrap;gap:.2rem 1.5rem;margin:.5rem 0 1rem;font-size:.9rem}"
        + ".dl-head dl div{flex:1 1 9rem;min-width:0}"
        + ".dl-head dt{color:#5a5a66;color:light-dark(#5a5a66,#b4b4c2)}.dl-head dd{margin:0;border-bottom:1px solid #8a8a96;"
        + "overflow-wrap:anywhere}"
        + ".dl-kind{margin:0;color:#5a5a66;color:light-dark(#5a5a66,#b4b4c2)}"
        + ".dl-foot{margin-top:2rem;border-top:1px solid #c9c9d1;font-size:.85rem;color:#5a5a66;color:light-dark(#5a5a66,#b4b4c2)}"
        + "@media screen and (max-width:40rem){.dl-body{margin:.8rem auto;padding:0 .6rem}}"
        + "@media print{.dl-page{color-scheme:light}.dl-body{max-width:none;margin:0;padding:0;font-size:10.5pt}"
        + ".dl-foot{break-before:avoid}}"
        + "@page{margin:15mm 15mm 18mm;@bottom-right{content:counter(page) \" / \" counter(pages)}}"
        + Fragment;
}
