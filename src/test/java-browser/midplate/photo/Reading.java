package midplate.photo;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.microsoft.playwright.Page;
import java.util.Base64;
import java.util.Map;
import java.util.TreeMap;

/** The reader of photos as the page uses it: its worker, asked in a browser. */
final class Reading {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final Page page;

    private Reading(Page page) {
        this.page = page;
    }

    /** In a page of the program's own address. */
    static Reading on(Page page) {
        page.evaluate("""
                () => {
                    let last = 0;
                    const waiting = new Map();
                    const begin = () => {
                        const worker = new Worker("/photo/reading/worker.js", { type: "module" });
                        worker.onmessage = ({ data }) => {
                            const answer = waiting.get(data.id);
                            waiting.delete(data.id);
                            answer(data);
                        };
                        worker.onerror = (event) => {
                            for (const answer of waiting.values()) answer({ fault: { code: "broken", message: event.message } });
                            waiting.clear();
                            globalThis.worker = begin();
                        };
                        return worker;
                    };
                    globalThis.worker = begin();
                    globalThis.ask = (message) => new Promise((resolve) => {
                        last += 1;
                        waiting.set(last, resolve);
                        globalThis.worker.postMessage({ id: last, ...message });
                    });
                    globalThis.told = (reply) => JSON.stringify(reply, (key, value) =>
                        value instanceof ImageBitmap || value instanceof Blob ? undefined
                            : ArrayBuffer.isView(value) ? Array.from(value) : value);
                    globalThis.bytes = (base64) => new Blob(
                        [Uint8Array.from(atob(base64), (c) => c.charCodeAt(0))], { type: "image/jpeg" });
                }
                """);
        return new Reading(page);
    }

    JsonNode open(byte[] jpeg) {
        return told(page.evaluate(
                "async (base64) => told(await ask({ ask: 'open', file: bytes(base64) }))",
                Base64.getEncoder().encodeToString(jpeg)));
    }

    JsonNode ask(String what, Map<String, Object> with) {
        Map<String, Object> message = new TreeMap<>(with);
        message.put("ask", what);
        return told(page.evaluate("async (message) => told(await ask(JSON.parse(message)))", text(message)));
    }

    /** What it takes from the file to the spots [ms], and the longest gap between frames of the page meanwhile [ms]. */
    double[] timed(byte[] jpeg, Map<String, Object> straighten) {
        Object[] with = {Base64.getEncoder().encodeToString(jpeg), text(straighten)};
        JsonNode told = told(page.evaluate("""
                async ([base64, straighten]) => {
                    const file = bytes(base64);
                    let longest = 0;
                    let before = performance.now();
                    let runs = true;
                    const frame = (now) => {
                        longest = Math.max(longest, now - before);
                        before = now;
                        if (runs) requestAnimationFrame(frame);
                    };
                    await new Promise((resolve) => requestAnimationFrame(resolve));
                    before = performance.now();
                    requestAnimationFrame(frame);
                    const begun = performance.now();
                    const opened = await ask({ ask: "open", file });
                    const flat = await ask({ ask: "straighten", ...JSON.parse(straighten) });
                    const { answer } = flat;
                    const read = await ask({
                        ask: "read",
                        start: answer.start ?? [8, 8],
                        front: answer.front ?? [60, 60, 60],
                        lanes: answer.lanes,
                    });
                    const taken = performance.now() - begun;
                    await new Promise((resolve) => requestAnimationFrame(resolve));
                    runs = false;
                    if (!opened.answer || !read.answer) throw new Error(told([opened, read]));
                    return told({ answer: [taken, longest] });
                }
                """, with));
        return new double[] {
            told.get("answer").get(0).asDouble(), told.get("answer").get(1).asDouble()
        };
    }

    private static String text(Map<String, Object> message) {
        try {
            return JSON.writeValueAsString(message);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    private static JsonNode told(Object text) {
        try {
            return JSON.readTree(String.valueOf(text));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }
}
