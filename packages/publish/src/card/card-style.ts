/*
 * The look of the card. Every colour, face and measure that a site may wish to change is a custom property with a
 * default (docs/publish.md lists them); every rule is under `.quern-card`, so that a page around it is not touched.
 * The card answers to its own width, not to the window's.
 */
export const cardStyle = `
.quern-card{
--ink:var(--quern-ink,#22211e);--quiet:var(--quern-quiet,#5b5850);--paper:var(--quern-paper,#fdfcf9);--rule:var(--quern-rule,#d9d4c7);
--accent:var(--quern-accent,#1c5a63);--wash:var(--quern-wash,#f3f0e7);--alert:var(--quern-alert,#8c2f1b);
--face:var(--quern-face,"Iowan Old Style","Palatino Linotype",Palatino,Charter,"Bitstream Charter",Georgia,serif);
--figures:var(--quern-figures,system-ui,-apple-system,"Segoe UI",Roboto,"Liberation Sans",sans-serif);
container-type:inline-size;max-width:var(--quern-width,62rem);margin-inline:auto;color:var(--ink);background:var(--paper);
font:1rem/1.55 var(--face);padding:var(--quern-space,clamp(1rem,4vw,2.5rem));overflow-wrap:break-word;color-scheme:light}
@media (prefers-color-scheme:dark){.quern-card:not([data-quern-theme=light] *){
--ink:var(--quern-dark-ink,#e9e5da);--quiet:var(--quern-dark-quiet,#b0aa9c);--paper:var(--quern-dark-paper,#181a1a);--rule:var(--quern-dark-rule,#3b3d3b);
--accent:var(--quern-dark-accent,#8fc9d0);--wash:var(--quern-dark-wash,#222525);--alert:var(--quern-dark-alert,#f0a48f);color-scheme:dark}}
[data-quern-theme=dark] .quern-card{
--ink:var(--quern-dark-ink,#e9e5da);--quiet:var(--quern-dark-quiet,#b0aa9c);--paper:var(--quern-dark-paper,#181a1a);--rule:var(--quern-dark-rule,#3b3d3b);
--accent:var(--quern-dark-accent,#8fc9d0);--wash:var(--quern-dark-wash,#222525);--alert:var(--quern-dark-alert,#f0a48f);color-scheme:dark}
.quern-card *,.quern-card *::before{box-sizing:border-box}
.quern-card :is(h1,h2,h3,h4,h5,h6){font-family:var(--face);font-weight:600;line-height:1.2;margin:0;color:inherit;text-wrap:balance}
.quern-card .quern-title{font-size:clamp(1.6rem,1.1rem + 2.6cqi,2.5rem);letter-spacing:-.01em}
.quern-card .quern-variant-name{color:var(--quiet);font-weight:400}
.quern-card p{margin:.35em 0}
.quern-card :is(ul,ol){margin:.3em 0;padding:0;list-style:none}
.quern-card :is(table,caption,th,td){font:inherit;text-align:start;border:0;background:none}
.quern-card table{border-collapse:collapse;margin:0}
.quern-card :is(th,td){padding:.28em 0;vertical-align:baseline}
.quern-card :is(.quern-by,.quern-quiet,.quern-origin){color:var(--quiet)}
.quern-card .quern-by{margin-top:.2em;font-style:italic}
.quern-card .quern-photo{display:block;width:100%;max-height:26rem;object-fit:cover;margin:1.2rem 0;border-radius:2px}
.quern-card .quern-introduction{max-width:42rem;font-size:1.06em}
.quern-card .quern-unseen{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}
.quern-card .quern-nowrap{white-space:nowrap}
.quern-card[dir=ltr] [dir=auto]{text-align:left}
.quern-card[dir=rtl] [dir=auto]{text-align:right}
.quern-card .quern-facts{display:flex;flex-wrap:wrap;gap:.9rem 2rem;margin:1.4rem 0 0;padding:.9rem 0;border-block:1px solid var(--rule);font-family:var(--figures);font-size:.94em;line-height:1.4}
.quern-card .quern-facts>div{min-width:0}
.quern-card dt{font-size:.8em;color:var(--quiet)}
.quern-card dd{margin:.1rem 0 0;font-variant-numeric:tabular-nums}
.quern-card .quern-yield-count{font-weight:600}
.quern-card .quern-field{font:inherit;font-weight:600;width:4.6em;padding:.25em .5em;color:inherit;background:var(--wash);border:1px solid var(--quiet);border-radius:3px}
.quern-card .quern-field[aria-invalid=true]{border-color:var(--alert);outline-color:var(--alert)}
.quern-card .quern-said{font-family:var(--figures);font-size:.88em;color:var(--quiet);margin:.6rem 0 0}
.quern-card .quern-said:empty{margin:0}
.quern-card .quern-said.quern-wrong{color:var(--alert)}
.quern-card .quern-allergens{margin-top:.9rem;font-family:var(--figures);font-size:.94em}
.quern-card .quern-allergens p{margin:.15em 0}
.quern-card .quern-problems{margin:1rem 0;padding:.6rem 1rem;border:1px solid var(--alert);border-inline-start-width:5px;font-family:var(--figures);font-size:.9em}
.quern-card .quern-make{margin-top:2.2rem}
.quern-card .quern-make-name{font-size:1.3em;padding-bottom:.3rem;border-bottom:2px solid var(--accent)}
.quern-card .quern-make-name::first-letter{text-transform:uppercase}
.quern-card .quern-make-name .quern-quiet{font:400 .66em/1 var(--figures)}
.quern-card .quern-make-body{display:grid;gap:1rem 2.6rem;margin-top:.5rem}
.quern-card .quern-ingredients{width:100%;align-self:start;line-height:1.35;table-layout:fixed}
.quern-card .quern-ingredients :is(td,thead th){font-family:var(--figures);font-size:.9em;font-variant-numeric:tabular-nums;padding-inline-end:.9rem}
.quern-card .quern-ingredients thead .quern-m{width:26%}
.quern-card .quern-ingredients thead .quern-u{width:28%}
.quern-card .quern-ingredients .quern-u:not(thead *){color:var(--quiet)}
.quern-card .quern-ingredients thead th{font-size:.78em;font-weight:400;color:var(--quiet);padding-top:0}
.quern-card .quern-ingredients th.quern-name{font-weight:400;width:auto;padding-inline-end:0}
.quern-card .quern-ingredients tbody tr+tr>*{border-top:1px solid var(--rule)}
.quern-card .quern-ingredients tbody tr.quern-or>*{border-top-style:dotted}
.quern-card .quern-ingredients tbody tr.quern-or th{padding-inline-start:1em}
.quern-card .quern-made{font-style:italic}
.quern-card .quern-amount.quern-one>:is(.quern-u,.quern-between){display:none}
.quern-card .quern-again>bdi{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}
.quern-card .quern-steps{counter-reset:step;margin:0}
.quern-card .quern-way>.quern-remark{margin-bottom:.9rem}
.quern-card .quern-step{counter-increment:step;position:relative;padding-inline-start:2rem;margin:0 0 1.05rem}
.quern-card .quern-step::before{content:counter(step);position:absolute;inset-inline-start:0;top:.12em;font:600 .92em/1.55 var(--figures);color:var(--accent)}
.quern-card .quern-sentence{margin:0}
.quern-card .quern-clock{font-family:var(--figures);font-size:.86em;color:var(--quiet);margin:.15rem 0 0;font-variant-numeric:tabular-nums}
.quern-card .quern-lane{color:var(--accent);font-weight:600}
.quern-card .quern-time{color:var(--ink)}
.quern-card :is(.quern-care,.quern-saved,.quern-remark){font-size:.95em;margin:.35rem 0 0;padding-inline-start:.8rem;border-inline-start:2px solid var(--rule)}
.quern-card .quern-remark-warning{border-color:var(--alert)}
.quern-card .quern-remark-warning b{color:var(--alert)}
.quern-card .quern-remarks{margin-top:1.6rem}
.quern-card .quern-end{display:grid;gap:1.6rem 2.6rem;margin-top:2.4rem;padding-top:1.4rem;border-top:1px solid var(--rule);font-size:.95em}
.quern-card .quern-end :is(h2,h3,h4,h5,h6){font-size:1.05em;margin-bottom:.3rem}
.quern-card .quern-end :is(ul,p){margin:.2rem 0}
.quern-card .quern-end li{margin:.25rem 0}
.quern-card .quern-nutrition table{width:100%;max-width:26rem;font-family:var(--figures);font-size:.9em;font-variant-numeric:tabular-nums}
.quern-card .quern-nutrition caption{color:var(--quiet);padding-bottom:.2rem}
.quern-card .quern-nutrition :is(th,td){font-weight:400;border-top:1px solid var(--rule);padding:.22em 0}
.quern-card .quern-nutrition td{text-align:end}
.quern-card .quern-nutrition .quern-part th{padding-inline-start:1em;color:var(--quiet)}
.quern-card .quern-origin{margin-top:2rem;font-family:var(--figures);font-size:.84em}
.quern-card a{color:var(--accent)}
.quern-card :is(input,button,a):focus-visible{outline:3px solid var(--accent);outline-offset:2px}
.quern-card .quern-turn{display:none;font:600 .86em/1.2 var(--figures);color:var(--accent);background:none;border:1px solid var(--accent);border-radius:3px;padding:.6em .9em;min-height:2.75rem;margin:1.1rem 0 0;cursor:pointer}
@container (max-width:34rem){
.quern-live .quern-ingredients thead :is(.quern-m,.quern-u){width:36%}
.quern-live .quern-turn{display:inline-block}
.quern-live[data-shown=metric] :is(.quern-u,.quern-between),.quern-live[data-shown=us] :is(.quern-m,.quern-between){display:none}
.quern-live[data-shown=us] .quern-ingredients .quern-u{color:inherit}
.quern-live[data-shown=us] .quern-again>bdi{position:static;width:auto;height:auto;clip-path:none;white-space:normal}
}
@container (min-width:46rem){
.quern-card .quern-ingredients thead .quern-m{width:6.2rem}
.quern-card .quern-ingredients thead .quern-u{width:7.6rem}
.quern-card .quern-make-body{grid-template-columns:minmax(21rem,5fr) 6fr}
.quern-card .quern-make-body>.quern-way:only-child{grid-column:1/-1}
.quern-card .quern-end{grid-template-columns:1fr 1fr}
.quern-card .quern-nutrition{grid-column:2;grid-row:1/span 3}
}
@media print{
.quern-card,.quern-card:not([data-quern-theme=light] *),[data-quern-theme=dark] .quern-card{--ink:#000;--quiet:#444;--paper:#fff;--rule:#bbb;--accent:#000;--wash:#fff;--alert:#000;
max-width:none;padding:0;font-size:9.5pt;line-height:1.38;color-scheme:light}
.quern-card .quern-title{font-size:18pt}
.quern-card .quern-photo{max-height:5cm}
.quern-card .quern-turn{display:none!important}
.quern-card .quern-field{border:0;padding:0;background:none;width:auto;max-width:6em}
.quern-card .quern-make{margin-top:.9rem}
.quern-card .quern-make-name{font-size:12pt;break-after:avoid}
.quern-card .quern-make-body{grid-template-columns:5fr 6fr;gap:.3rem 1.4rem}
.quern-card .quern-make-body>.quern-way:only-child{grid-column:1/-1}
.quern-card .quern-ingredients :is(th,td){padding-block:.14em}
.quern-card .quern-step{margin-bottom:.5rem;padding-inline-start:1.5rem;break-inside:avoid}
.quern-card tr{break-inside:avoid}
.quern-card .quern-facts{margin-top:.6rem;padding:.4rem 0}
.quern-card .quern-end{grid-template-columns:1fr 1fr;gap:.7rem 1.4rem;margin-top:1rem;padding-top:.6rem;font-size:.92em}
.quern-card .quern-end>section{break-inside:avoid}
.quern-card .quern-nutrition{grid-column:2;grid-row:1/span 3}
.quern-card .quern-origin{margin-top:.8rem}
}
`.trim();
