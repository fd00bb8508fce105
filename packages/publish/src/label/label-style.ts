/*
 * The look of the label page. Figures are set in a plain table of our own, so that nobody takes it for an official form.
 * What matters is told by words, weight and capitals; the one colour only helps.
 */
export const labelStyle = `
.quern-label{--ink:#1f1f1c;--quiet:#5a564d;--paper:#fdfcf9;--rule:#d6d0c2;--alert:#8c2f1b;
max-width:44rem;margin:0 auto;padding:1.5rem clamp(1rem,4vw,2.5rem) 3rem;color:var(--ink);background:var(--paper);
font:1rem/1.5 "Iowan Old Style",Palatino,Charter,"Bitstream Charter",Georgia,serif;overflow-wrap:break-word}
@media (prefers-color-scheme:dark){.quern-label{--ink:#e9e5da;--quiet:#b0aa9c;--paper:#181a1a;--rule:#3b3d3b;--alert:#f0a48f}body{background:#181a1a}}
.quern-label h1{font-size:1.9rem;line-height:1.2;margin:0 0 .3rem}
.quern-label h2{font-size:1.15rem;margin:1.8rem 0 .4rem;padding-bottom:.2rem;border-bottom:2px solid var(--rule)}
.quern-label p{margin:.35rem 0}
.quern-label strong{font-weight:700;text-decoration:underline;text-decoration-thickness:.06em;text-underline-offset:.15em}
.quern-label .quern-alerts{border:2px solid var(--alert);padding:.6rem 1rem;margin:1rem 0;list-style:none}
.quern-label .quern-alerts li::before{content:"! ";font-weight:700;color:var(--alert)}
.quern-label :is(table,caption,th,td){font:inherit;text-align:start}
.quern-label table{border-collapse:collapse;width:100%;font-family:system-ui,-apple-system,"Segoe UI",Roboto,"Liberation Sans",sans-serif;font-size:.92rem;font-variant-numeric:tabular-nums}
.quern-label :is(th,td){padding:.3rem .6rem .3rem 0;vertical-align:baseline;border-top:1px solid var(--rule)}
.quern-label thead :is(th,td){border-top:0;color:var(--quiet);font-weight:400;font-size:.86em}
.quern-label tbody th{font-weight:600}
.quern-label tbody .quern-level-1 th{font-weight:400;padding-inline-start:1.2rem}
.quern-label tbody .quern-level-2 th{font-weight:400;padding-inline-start:2.4rem}
.quern-label td,.quern-label thead th+th{text-align:end}
.quern-label td span{white-space:nowrap}
.quern-label caption~tbody td{white-space:nowrap}
.quern-label .quern-scroll{overflow-x:auto}
.quern-label caption{padding:.8rem 0 .2rem;font-weight:600}
.quern-label caption~tbody :is(th,td:last-child){white-space:normal;font-weight:400}
.quern-label .quern-notes{color:var(--quiet);font-size:.86rem;padding-inline-start:1.1rem;margin:.6rem 0}
.quern-label .quern-cautions{list-style:none;padding:0;margin:.4rem 0}
.quern-label .quern-cautions li{margin:.6rem 0;padding-inline-start:.8rem;border-inline-start:3px solid var(--rule)}
.quern-label .quern-cautions li.quern-check{border-color:var(--alert)}
.quern-label .quern-quiet{color:var(--quiet);font-size:.9rem}
@media (max-width:30rem){.quern-label td span{white-space:normal}.quern-label :is(th,td){padding-inline-end:.4rem}}
@page{margin:15mm}
@media print{.quern-label .quern-scroll{overflow:visible}.quern-label caption~tbody td{white-space:normal}.quern-label caption{break-after:avoid}
.quern-label{padding:0;max-width:none;background:none}.quern-label h2{break-after:avoid}.quern-label :is(tr,li){break-inside:avoid}}
`;
