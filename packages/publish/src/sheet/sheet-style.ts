/** The look of sheets and shopping lists: large figures, narrow rules, black on white in print. */
export const sheetStyle = `
:root{color-scheme:light dark;--ink:#22211e;--quiet:#5b5850;--rule:#d9d4c7;--paper:#fdfcf9;--accent:#1c5a63}
@media (prefers-color-scheme:dark){:root{--ink:#e9e5da;--quiet:#b0aa9c;--rule:#3b3d3b;--paper:#181a1a;--accent:#8fc9d0}}
body{margin:0;background:var(--paper);color:var(--ink);font:1rem/1.45 system-ui,-apple-system,"Segoe UI",Roboto,"Liberation Sans",sans-serif}
main{max-width:54rem;margin-inline:auto;padding:clamp(1rem,4vw,2.5rem)}
h1{font-size:1.7rem;line-height:1.2;margin:0 0 .6rem}
h2{font-size:1.15rem;margin:1.8rem 0 .4rem}
ul{margin:.3rem 0;padding-inline-start:1.2rem}
table{border-collapse:collapse;width:100%;table-layout:fixed;font-variant-numeric:tabular-nums}
thead th{font-size:.78rem;font-weight:400;color:var(--quiet);border-bottom:1px solid var(--rule)}
:is(th,td){padding:.28rem .7rem .28rem 0;text-align:start;vertical-align:baseline;overflow-wrap:break-word}
:is(.quern-weight,.quern-percent){text-align:end;width:6.2rem}
.quern-us{width:15rem}
.quern-basket .quern-weight{width:34%}
.quern-basket .quern-us{width:26%}
@media (max-width:40rem){:is(th,td){padding-inline-end:.4rem}.quern-weight{width:4.6rem}.quern-percent{width:3.5rem}.quern-us{width:5.6rem}.quern-basket .quern-us{width:24%}}
tbody .quern-weight{font-size:1.1em;font-weight:600}
tbody th,tfoot th{font-weight:500}
.quern-note,.quern-remark,.quern-out :is(td,th){color:var(--quiet);font-weight:400}
.quern-step td{padding:.45rem 0 .6rem 1rem;border-inline-start:2px solid var(--rule)}
.quern-step p{margin:.1rem 0;max-width:40rem}
.quern-clock{color:var(--accent);font-size:.9em}
tfoot :is(td,th){border-top:1px solid var(--ink)}
.quern-watch{border:1px solid var(--rule);padding:.2rem 1rem .6rem;margin-top:2rem}
@media print{:root{--ink:#000;--quiet:#444;--rule:#999;--paper:#fff;--accent:#000}main{padding:0;max-width:none}section{break-inside:avoid-page}}
`.trim();
