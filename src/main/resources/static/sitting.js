// What a page with an item gains from a script: an answer is saved while the student stays on the page and sent again
// until the server has it, the clock counts, keys work. Without it the buttons do all of this.
"use strict";

const form = document.querySelector("form.item");
let timeIsOver = false;

/** A random id of version 4; crypto.randomUUID is not there over plain HTTP. */
function newId() {
    const bytes = crypto.getRandomValues(new Uint8Array(16));
    bytes[6] = (bytes[6] & 0x0f) | 0x40;
    bytes[8] = (bytes[8] & 0x3f) | 0x80;
    const hex = Array.from(bytes, (b) => b.toString(16).padStart(2, "0")).join("");
    return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, "$1-$2-$3-$4-$5");
}

/**
 * Saves the answers of a form. At most one request is on its way. What was typed is kept in the browser's store of this
 * tab until the server has acknowledged it.
 */
function saveAnswers() {
    const FIRST_GAP = 1000;
    const LONGEST_GAP = 30000;
    const TYPING_PAUSE = 1500;
    const state = document.getElementById("saving");
    const refused = document.getElementById("refused");
    const reading = document.getElementById("reading");
    const field = document.getElementById("answer");
    // The collection of fields has a method called item, so the field of that name is asked for by namedItem.
    const itemId = form.elements.namedItem("item").value;
    const key = "answer " + form.action + " " + itemId;
    let sequence = Number(form.elements.sequence.value);
    let last = answer();
    let waiting = null;
    let busy = false;
    let gap = FIRST_GAP;
    let retry = 0;
    let typing = 0;
    let leaving = null;

    function answer() {
        return new FormData(form).get("answer") || "";
    }

    function show(kind, words) {
        state.className = "state " + kind;
        state.textContent = words;
    }

    function tell(message) {
        refused.hidden = message === "";
        refused.textContent = message;
        if (field) {
            field.setAttribute("aria-invalid", String(message !== ""));
        }
    }

    /** Takes the present answer up, unless there is none or it was taken up before. */
    function takeUp() {
        clearTimeout(typing);
        const now = answer();
        if (now.trim() === "" || now === last) {
            return;
        }
        last = now;
        waiting = { clientId: newId(), sequence: sequence++, answer: now };
        form.elements.clientId.value = newId();
        form.elements.sequence.value = String(sequence);
        sessionStorage.setItem(key, now);
        tell("");
        show("saving", form.dataset.saving);
        gap = FIRST_GAP;
        send();
    }

    async function send() {
        clearTimeout(retry);
        if (busy || waiting === null) {
            return;
        }
        busy = true;
        const sent = waiting;
        const body = new URLSearchParams({
            csrf: form.elements.csrf.value,
            item: itemId,
            clientId: sent.clientId,
            seat: form.elements.seat.value,
            sequence: String(sent.sequence),
            answer: sent.answer,
        });
        try {
            const response = await fetch(form.action, {
                method: "POST",
                headers: { Accept: "application/json" },
                body,
                signal: AbortSignal.timeout(LONGEST_GAP),
            });
            if (response.status >= 500 || response.status === 429) {
                throw new Error("the server cannot take it now");
            }
            const said = await response.json();
            busy = false;
            settle(sent, response, said);
        } catch (e) {
            busy = false;
            show("unsaved", form.dataset.unsaved);
            retry = setTimeout(send, gap);
            gap = Math.min(2 * gap, LONGEST_GAP);
        }
    }

    function settle(sent, response, said) {
        if (waiting !== sent) {
            send();
            return;
        }
        waiting = null;
        gap = FIRST_GAP;
        if (!response.ok) {
            leaving = null;
            if (response.status === 400) {
                sessionStorage.removeItem(key);
            }
            show("wrong", form.dataset.refused);
            tell(said.detail);
            return;
        }
        sessionStorage.removeItem(key);
        show("saved", form.dataset.saved + said.saved);
        if (reading) {
            reading.textContent = form.dataset.readAs.replace("…", said.echo);
        }
        if (leaving !== null) {
            const button = leaving;
            leaving = null;
            form.requestSubmit(button);
        }
    }

    form.addEventListener("change", takeUp);
    form.addEventListener("input", () => {
        clearTimeout(typing);
        if (field) {
            typing = setTimeout(takeUp, TYPING_PAUSE);
        }
    });
    // A form that is sent while an answer waits would leave the page with it; it is sent once the answer is saved.
    form.addEventListener("submit", (event) => {
        takeUp();
        if (waiting !== null) {
            event.preventDefault();
            leaving = event.submitter;
            send();
        }
    });
    addEventListener("online", send);
    addEventListener("beforeunload", (event) => {
        if (waiting !== null && !timeIsOver) {
            event.preventDefault();
        }
    });

    const unsaved = sessionStorage.getItem(key);
    if (unsaved !== null && unsaved !== last) {
        restore(unsaved);
        takeUp();
    }

    function restore(text) {
        if (field) {
            field.value = text;
            return;
        }
        for (const option of form.querySelectorAll("input[name=answer]")) {
            option.checked = option.value === text;
        }
    }
}

/** Counts the minutes down; the server's clock decides, and it hands in by itself. */
function countDown(clock) {
    const TICK = 250;
    const SECONDS_BELOW = 120;
    const number = clock.querySelector("strong");
    const unit = clock.querySelector("strong + span");
    const announcement = document.getElementById("announcement");
    const end = Date.now() + 1000 * Number(clock.dataset.seconds);
    const warnings = [
        { below: 300, words: clock.dataset.five },
        { below: 60, words: clock.dataset.one },
    ].filter((w) => Number(clock.dataset.seconds) > w.below);

    function tick() {
        const left = Math.max(0, Math.ceil((end - Date.now()) / 1000));
        const inSeconds = left < SECONDS_BELOW;
        number.textContent = inSeconds
            ? Math.floor(left / 60) + ":" + String(left % 60).padStart(2, "0")
            : String(Math.floor(left / 60));
        unit.textContent = inSeconds ? clock.dataset.left : clock.dataset.minutesLeft;
        while (warnings.length > 0 && left <= warnings[0].below) {
            announcement.textContent = warnings.shift().words;
        }
        if (left === 0) {
            clearInterval(timer);
            timeIsOver = true;
            announcement.textContent = clock.dataset.over;
            // The sitting leads to its result once it is handed in, and to its next question if this clock was fast.
            setTimeout(() => location.assign(clock.dataset.sitting), 2000);
        }
    }

    const timer = setInterval(tick, TICK);
    tick();
    clock.open = sessionStorage.getItem("clock") !== "hidden";
    clock.addEventListener("toggle", () => sessionStorage.setItem("clock", clock.open ? "shown" : "hidden"));
}

/** Lets keys choose, move and flag, unless the student has said not to. */
function listenToKeys(keys) {
    const use = document.getElementById("use-keys");
    keys.hidden = false;
    use.checked = localStorage.getItem("keys") !== "off";
    use.addEventListener("change", () => localStorage.setItem("keys", use.checked ? "on" : "off"));

    function press(selector) {
        const button = form.querySelector(selector);
        if (button !== null && !button.disabled) {
            button.click();
        }
        return button !== null;
    }

    function act(key) {
        switch (key) {
            case "ArrowLeft":
                return press("button[name=go][value=back]");
            case "ArrowRight":
                return press(".primary[name=go]");
            case "f":
            case "F":
                return press("button[name=flag]");
            default:
                return /^[a-d]$/i.test(key) && press(`input[type=radio][value=${key.toUpperCase()}]`);
        }
    }

    document.addEventListener("keydown", (event) => {
        const typing = event.target.matches("input:not([type=radio]), textarea, select");
        if (!use.checked || typing || event.ctrlKey || event.altKey || event.metaKey || event.repeat) {
            return;
        }
        if (act(event.key)) {
            event.preventDefault();
        }
    });
}

if (form !== null && "saves" in form.dataset) {
    saveAnswers();
}
const clock = document.querySelector(".clock");
if (clock !== null) {
    countDown(clock);
}
const keys = document.querySelector(".keys");
if (keys !== null) {
    listenToKeys(keys);
}
