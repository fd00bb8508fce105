/** What the pages of a site have besides the card: the way back, the index, the book. */
export const siteStyle = `
.quern-nav,.quern-site{max-width:var(--quern-width,62rem);margin-inline:auto;padding-inline:clamp(1rem,4vw,2.5rem);
--ink:var(--quern-ink,#22211e);--quiet:var(--quern-quiet,#5b5850);--rule:var(--quern-rule,#d9d4c7);--accent:var(--quern-accent,#1c5a63);--wash:var(--quern-wash,#f3f0e7);
--face:var(--quern-face,"Iowan Old Style","Palatino Linotype",Palatino,Charter,"Bitstream Charter",Georgia,serif);
--figures:var(--quern-figures,system-ui,-apple-system,"Segoe UI",Roboto,"Liberation Sans",sans-serif);color:var(--ink);font:1rem/1.5 var(--face);color-scheme:light dark}
@media (prefers-color-scheme:dark){html:not([data-quern-theme=light]) :is(.quern-nav,.quern-site){
--ink:var(--quern-dark-ink,#e9e5da);--quiet:var(--quern-dark-quiet,#b0aa9c);--rule:var(--quern-dark-rule,#3b3d3b);--accent:var(--quern-dark-accent,#8fc9d0);--wash:var(--quern-dark-wash,#222525)}}
html[data-quern-theme=dark] :is(.quern-nav,.quern-site){
--ink:var(--quern-dark-ink,#e9e5da);--quiet:var(--quern-dark-quiet,#b0aa9c);--rule:var(--quern-dark-rule,#3b3d3b);--accent:var(--quern-dark-accent,#8fc9d0);--wash:var(--quern-dark-wash,#222525)}
.quern-nav{padding-block:1rem 0;font-family:var(--figures);font-size:.9rem}
:is(.quern-nav,.quern-site) a{color:var(--accent)}
:is(.quern-nav,.quern-site) :is(a,input,select,button):focus-visible{outline:3px solid var(--accent);outline-offset:2px}
.quern-site{padding-block:2.2rem}
.quern-site h1{font-size:clamp(1.7rem,1.2rem + 2.4vw,2.6rem);font-weight:600;line-height:1.15;margin:0 0 .3rem}
.quern-site .quern-links{font-family:var(--figures);font-size:.9rem;margin:.2rem 0 1.4rem}
.quern-search{display:none;flex-wrap:wrap;gap:.8rem 1.2rem;padding:.9rem 0;border-block:1px solid var(--rule);font-family:var(--figures);font-size:.9rem}
.quern-search.quern-live{display:flex}
.quern-search label{display:grid;gap:.2rem;color:var(--quiet);font-size:.82rem}
.quern-search :is(input,select){font:inherit;font-size:1rem;color:var(--ink);background:var(--wash);border:1px solid var(--quiet);border-radius:3px;padding:.4em .5em;max-width:100%;min-height:2.6rem}
.quern-found{font-family:var(--figures);font-size:.88rem;color:var(--quiet);margin:.7rem 0}
.quern-found:empty{margin:0}
.quern-list li[dir=ltr] [dir=auto]{text-align:left}
.quern-list li[dir=rtl] [dir=auto]{text-align:right}
.quern-list{list-style:none;margin:0;padding:0}
.quern-list li{padding:.75rem 0;border-bottom:1px solid var(--rule)}
.quern-list a{font-size:1.15rem;font-weight:600;text-decoration-thickness:1px;text-underline-offset:.18em}
.quern-list p{margin:.15rem 0 0;color:var(--quiet)}
.quern-list .quern-facts-line{font-family:var(--figures);font-size:.86rem}
.quern-contents{columns:18rem 2;padding-inline-start:1.4em}
.quern-contents li{margin:.25rem 0;break-inside:avoid}
.quern-book .quern-card{border-top:1px solid var(--rule,#d9d4c7);margin-top:2rem}
@media print{.quern-nav,.quern-site .quern-links{display:none}
.quern-nav,.quern-site{--ink:#000;--quiet:#444;--accent:#000;--rule:#bbb;max-width:none;padding:0;font-size:10pt}
.quern-book .quern-card{break-before:page;border:0;margin:0}}
`.trim();
