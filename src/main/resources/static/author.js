// What writing a question gains from a script: what the bank says follows the typing. Without it a button asks.
"use strict";

const draft = document.getElementById("draft");
const said = document.getElementById("said");
const TYPING_PAUSE = 800;
let typing = 0;
let asked = 0;

/** Asks for what the bank says to the present text; an answer that comes after a later question is left aside. */
async function check() {
    const mine = ++asked;
    try {
        const answer = await fetch(draft.dataset.check, {method: "POST", body: new URLSearchParams(new FormData(draft))});
        if (answer.ok && mine === asked) {
            said.innerHTML = await answer.text();
        }
    } catch {
        // Without a connection the last answer stays; the next change asks again.
    }
}

draft.addEventListener("input", () => {
    clearTimeout(typing);
    typing = setTimeout(check, TYPING_PAUSE);
});
