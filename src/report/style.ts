/** The look of a report: a printed page in black on white, on paper and on a screen. Names of elements first, then of their kinds, then paper, then narrow screens. */
export const reportStyle = `
:root{color-scheme:light;--ink:#16161a;--soft:#55555e;--line:#b9b4ab;--faint:#f4f1ec;--brick:#8a3a24}
*{box-sizing:border-box}
body{margin:0 auto;max-width:56rem;padding:1.5rem clamp(1rem,4vw,3rem) 4rem;background:#fff;color:var(--ink);font:1rem/1.45 system-ui,-apple-system,"Segoe UI",Roboto,"Open Sans",sans-serif;overflow-wrap:anywhere}
h1,h2,h3,h4{line-height:1.2;text-wrap:balance;break-after:avoid}
h1{font-size:2.25rem;margin:0 0 .5rem}
h2{font-size:1.35rem;margin:2.25rem 0 .6rem;padding-top:.6rem;border-top:2px solid var(--ink)}
h3{font-size:1.1rem;margin:1.6rem 0 .3rem}
h4{font-size:1rem;margin:0 0 .3rem}
p{margin:.3rem 0;orphans:3;widows:3}
a{color:inherit;text-decoration-thickness:1px;text-underline-offset:.15em}
code{font:.85em/1.3 ui-monospace,Consolas,"DejaVu Sans Mono",monospace}
pre{margin:.5rem 0;padding:.75rem;background:var(--faint);border:1px solid var(--line);font:.8rem/1.4 ui-monospace,Consolas,"DejaVu Sans Mono",monospace;white-space:pre-wrap}
ul,ol{margin:.3rem 0;padding-left:1.4rem}
header{border-top:6px double var(--brick);padding-top:.75rem}
.kind{color:var(--brick);font-weight:600;margin:0}
.pairs{display:grid;grid-template-columns:repeat(auto-fill,minmax(min(15rem,100%),1fr));gap:.15rem 1.25rem;margin:.5rem 0}
.pairs>div{display:flex;gap:.5ch}
dt{color:var(--soft)}dt::after{content:":"}
dd{margin:0}
.figures{display:flex;flex-wrap:wrap;gap:.25rem 2rem;margin:.4rem 0}
.figures dt{font-size:.85em}.figures dt::after{content:none}
.figures dd{font-weight:600}
.remedies{margin:.4rem 0}
.remedies>div{margin:.25rem 0}
.remedies dt{font-weight:600;color:inherit;display:inline}
.remedies dd{display:inline;margin-left:.5ch}
.mark{width:1.05em;height:1.05em;vertical-align:-.17em;flex:none}
.mark .outline{fill:none;stroke:currentColor;stroke-width:1.4}
.mark .sign{fill:none;stroke:currentColor;stroke-width:1.6}
.mark.fail .outline{fill:currentColor}
.mark.fail .sign{stroke:#fff;stroke-width:2}
.mark.notApplicable .outline{stroke-dasharray:2.2 2}
.outcome{white-space:nowrap}
.counts .outcome{margin-right:1.25rem}
.verdict h2{border:0;padding:0;margin-top:1.25rem;font-size:1.6rem}
.verdict.fail{border-left:6px solid var(--ink);padding-left:1rem}
.verdict.attention,.verdict.incomplete{border-left:6px double var(--ink);padding-left:1rem}
.verdict.pass{border-left:2px solid var(--ink);padding-left:1rem}
.notice{margin:1.25rem 0;padding:.6rem .8rem;border:1px solid var(--ink)}
.cautions ol{padding-left:1.8rem}.cautions li{margin:.35rem 0;break-inside:avoid}
.about,.origin,.aside{color:var(--soft);font-size:.87em}
th .origin,th .aside,td .aside,.aside{display:block;font-weight:400}
.force{font-size:.82em;font-weight:400;padding:0 .4em;border:1px solid var(--line);border-radius:.6em;white-space:nowrap}
.force.mandatory{border:1.5px solid var(--ink);font-weight:600}
.evidence.memory{font-weight:600;text-decoration:underline wavy 1px;text-underline-offset:.2em}
.miss{margin:.9rem 0;padding:.6rem .8rem;border:1px solid var(--ink);border-left-width:6px;break-inside:avoid}
.miss h3{margin:0 0 .3rem}
.mind{margin:.4rem 0}
.notes,.otherwise{font-size:.9em}
.otherwise p{margin:.3rem 0 0}
.kept{break-inside:avoid;break-after:avoid}
table{width:100%;border-collapse:collapse;margin:.6rem 0 1.2rem;font-size:.92rem}
caption{text-align:left;font-weight:600;padding:.3rem 0;break-after:avoid}
thead{display:table-header-group}
th,td{text-align:left;vertical-align:top;padding:.35rem .6rem .35rem 0;border-bottom:1px solid var(--line)}
thead th{overflow-wrap:normal;border-bottom:1.5px solid var(--ink);font-size:.9em;color:var(--soft)}
tbody th{font-weight:500;width:44%}
.amounts tbody th{width:20%}.amounts td:nth-child(2){width:16%}
.amount{white-space:nowrap}
.steps{display:block;font-size:.92em}
.settled tbody th{width:25%}.settled td:nth-child(2){width:18%}.settled td:nth-child(3){width:20%}
.settled .origin,.settled .aside{margin:0}
tbody .group th{width:auto;font-weight:700;padding-top:.7rem;}
.group{break-after:avoid}
.crew{columns:24rem 2;column-gap:1.5rem}.crew .wide{break-inside:avoid;margin:0 0 1rem}
tr{break-inside:avoid}
.wide{overflow-x:auto;margin:.6rem 0 1.2rem}
.wide table{margin:0}
.wide tbody th{width:auto}
.wide th,.wide td{overflow-wrap:normal}
.ruled-out,ul.ruled-out{font-size:.9em}
.ruled-out ul,ul.ruled-out{columns:2;column-gap:2rem}
.ruled-out li{break-inside:avoid;margin:.15rem 0}
.ruled-out .origin{font-size:.87em}
.counts tbody th{width:32%}.walk tbody th{width:22%}
.facts,.tally{list-style:none;padding:0}.facts{columns:2;column-gap:1.5rem}
.opening{margin:.8rem 0;padding-top:.4rem;border-top:1px solid var(--line)}
.drawing{margin:1rem 0;break-inside:avoid}
.sheet{border:1px solid var(--line);padding:.5rem;background:#fff}
.sheet svg{display:block;max-width:100%;height:auto;margin:auto}
figcaption{margin-top:.4rem;font-size:.87em}
.footnotes{list-style:none;padding:0;font-size:.8em;columns:2;column-gap:2rem}
.footnotes li{break-inside:avoid;margin:.15rem 0}
.reference,.mind a{display:inline-block;min-width:1.5rem;min-height:1.5rem;text-align:center;white-space:nowrap}
.reference{font-size:.85em}
:focus-visible{outline:3px solid #1b5fbf;outline-offset:2px}
@media screen and (max-width:40rem){
h1{font-size:1.8rem}
.stacks thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
.stacks,.stacks caption,.stacks tbody,.stacks tr,.stacks th,.stacks td{display:block;width:auto}
.stacks tbody tr{border-bottom:1px solid var(--ink);padding:.4rem 0}
.stacks tbody th,.stacks td{border:0;padding:.1rem 0}
.stacks td[data-column]::before{content:attr(data-column) ": ";color:var(--soft)}
.ruled-out ul,ul.ruled-out,.facts,.footnotes{columns:1}
}
@media print{
body{max-width:none;padding:0;font-size:8.5pt;line-height:1.35}
h1{font-size:18pt}h2{font-size:12pt;margin-top:10pt;padding-top:4pt}h3{font-size:10pt;margin-top:7pt}h4{font-size:9.5pt}
h2::after{content:"";display:block;height:22mm;margin-bottom:-22mm}h2{break-inside:avoid}
a{text-decoration:none}
.reference,.mind a{display:inline;min-width:0;min-height:0}
.wide{overflow:visible}
.drawing{margin:4pt 0}
.sheet{border:0;padding:0}
.sheet svg{max-height:228mm}
.drawing:first-of-type svg{max-height:134mm}
.callouts{display:none}
pre{font-size:6.5pt;line-height:1.2;padding:0;border:0;background:none}
table{font-size:7.5pt;line-height:1.25;margin:4pt 0 8pt}
th,td{padding:1.5pt 6pt 1.5pt 0}
.settled,.amounts{font-size:6.5pt;line-height:1.17}
.settled td .aside::before{content:"– "}.amounts .aside::before{content:" "}
.settled .aside,.amounts .aside,.amounts .steps{display:inline;margin:0 0 0 .4em}
.evidence.memory{text-decoration:underline .5pt}
.settled th,.settled td,.amounts th,.amounts td{padding:.7pt 5pt .7pt 0}
tbody .group th{padding-top:3pt}
.settled thead th,.amounts thead th,.crew thead th{font-size:1em}
.settled,.amounts{display:block;columns:2;column-gap:6mm}
.settled caption,.amounts caption{display:block;column-span:all}
.settled thead,.amounts thead{display:none}
.settled tbody,.amounts tbody,.settled tr,.amounts tr{display:block}
.settled tr,.amounts tr{border-bottom:.5pt solid var(--line);padding:.7pt 0}
.settled tbody th,.amounts tbody th,.settled td,.amounts td{display:inline;border:0;padding:0}
.settled th .origin{display:inline;margin:0 .5em}
.settled td:nth-child(2)::before{content:"Required: "}.settled td:nth-child(2)::after,.settled td:nth-child(3)::after{content:". "}
.settled tbody th{font-weight:600}
.amounts tbody th{font-weight:600}.amounts th::after{content:": "}.amounts td:nth-child(2)::after{content:". "}
.in-full{font-size:6.3pt;line-height:1.2}
.crew.narrow{columns:3;column-gap:5mm}.crew.broad{columns:2;column-gap:5mm}.crew .wide{margin:0 0 5pt}.crew table{font-size:6.5pt;line-height:1.2}.crew th,.crew td{padding:.6pt 4pt .6pt 0}
.ruled-out li{font-size:7pt;line-height:1.2}
.footnotes{columns:3;column-gap:5mm;font-size:6.3pt;line-height:1.2}.footnotes li{margin:.5pt 0}
}
@page{margin:12mm 10mm 12mm;@bottom-left{content:"An aid, not an approval. The adopted code and the authority having jurisdiction prevail.";font:7.5pt system-ui,sans-serif;color:#333}@bottom-right{content:counter(page) " / " counter(pages);font:8pt system-ui,sans-serif}@top-left{font:8pt system-ui,sans-serif;color:#333}}
`
