/*
 * The look of a comparison: two quiet columns; what went is struck through, what came underlined, so that nothing hangs
 * on colour alone.
 */
export const comparisonStyle = `
:root{color-scheme:light dark;--ink:#22211e;--quiet:#5f5b52;--rule:#ddd7ca;--paper:#fdfcf9;--came:#e3eee4;--came-line:#2f6b3a;--went:#f3e6e0;--went-line:#9a4a34;--alarm:#8c2f1b}
@media (prefers-color-scheme:dark){:root{--ink:#e9e5da;--quiet:#b0aa9c;--rule:#3b3d3b;--paper:#181a1a;--came:#1e3324;--came-line:#8fcf9b;--went:#3d2620;--went-line:#e2a390;--alarm:#f0a48f}}
body{margin:0;background:var(--paper);color:var(--ink);font:1rem/1.5 system-ui,-apple-system,"Segoe UI",Roboto,"Liberation Sans",sans-serif}
main{max-width:62rem;margin-inline:auto;padding:clamp(1rem,4vw,2.5rem)}
.quern-file{color:var(--quiet);margin:3rem 0 .4rem}.quern-file:first-child{margin-top:0}
.quern-compare h1{font:600 1.75rem/1.2 "Iowan Old Style",Palatino,Charter,"Bitstream Charter",Georgia,serif;margin:0 0 .5rem}
.quern-compare h2{font-size:1rem;letter-spacing:.02em;margin:2.2rem 0 .2rem;padding-bottom:.3rem;border-bottom:2px solid var(--ink)}
.quern-compare .quern-summary{font:1.1rem/1.5 "Iowan Old Style",Palatino,Charter,"Bitstream Charter",Georgia,serif;max-width:44rem;margin:.3rem 0}
.quern-compare .quern-quiet{color:var(--quiet)}
.quern-compare table{border-collapse:collapse;width:100%;table-layout:fixed;margin:.9rem 0 0;font-size:.95rem;font-variant-numeric:tabular-nums}
.quern-compare :is(th,td){text-align:start;vertical-align:baseline;padding:.32rem .8rem .32rem 0;overflow-wrap:anywhere;font-weight:400}
.quern-compare thead :is(th,td){color:var(--quiet);font-size:.8rem}
.quern-compare thead th:first-child{width:24%;font-size:.92rem;font-weight:600;color:var(--ink)}
.quern-compare thead :nth-child(4){width:21%}
.quern-compare tbody tr{border-top:1px solid var(--rule)}
.quern-compare tbody th{padding-inline-end:1rem}
.quern-compare .quern-note{color:var(--quiet);font-size:.88rem}
.quern-compare .quern-none{color:var(--quiet)}
.quern-compare del{background:var(--went);text-decoration:line-through;text-decoration-color:var(--went-line);text-decoration-thickness:.07em}
.quern-compare ins{background:var(--came);text-decoration:underline;text-decoration-color:var(--came-line);text-decoration-thickness:.09em;text-underline-offset:.18em}
.quern-compare .quern-alarm th{font-weight:700;color:var(--alarm)}
.quern-compare .quern-alarm th::before{content:"! "}
.quern-compare .quern-recipe+.quern-recipe{margin-top:3.5rem}
@media (max-width:38rem){.quern-compare table{table-layout:auto;font-size:.9rem}.quern-compare thead th:first-child{width:auto}}
@media print{:root{--ink:#000;--quiet:#444;--rule:#aaa;--paper:#fff;--came:#fff;--went:#fff;--alarm:#000}main{padding:0;max-width:none}.quern-compare tr{break-inside:avoid}.quern-compare h2{break-after:avoid}}
`.trim();
