// Made by scripts/bundle-page-scripts.mjs. Not written by hand.

/** The script of a site’s index: its search. */
export const siteScript = "\"use strict\";(()=>{var c=document.querySelector(\".quern-search\"),l=document.querySelector(\".quern-found\"),a=[...document.querySelectorAll(\".quern-list > li\")].map(e=>({element:e,facts:JSON.parse(e.dataset.card??\"{}\")})),i=[...document.querySelectorAll(\"[data-search]\")],o=e=>i.find(({dataset:t})=>t.search===e)?.value??\"\";function d(e){let t=o(\"text\").toLowerCase().split(/\\s+/),[r,s,n]=[o(\"tag\"),o(\"allergen\"),o(\"time\")];return t.every(u=>e.text.includes(u))&&(r===\"\"||e.tags.includes(r))&&(s===\"\"||e.labelled&&!e.allergens.includes(s))&&(n===\"\"||e.minutes!==void 0&&e.minutes<=Number(n))}function m(){let e=0;for(let{element:r,facts:s}of a){let n=d(s);r.hidden=!n,n&&e++}if(!l)return;let t=o(\"allergen\")===\"\"?\"\":\" Read the label of each before you rely on it.\";l.textContent=`${e} of ${a.length}.${t}`}if(c){c.classList.add(\"quern-live\");for(let e of i)e.addEventListener(\"input\",m)}})();";

/** Its hash, for a content security policy: `script-src 'sha256-…'`. */
export const siteScriptHash = "sha256-1hDgx4odbaE9845knNEPn4kk4Fzr5qeM2LbnhW/9Dys=";
