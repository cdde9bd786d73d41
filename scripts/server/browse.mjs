// @ts-check
// A browser without scripts and without a screen, for the measurements and for the check of several copies.

/** Named and numbered entities that Next writes into attributes. */
const ENTITIES = new Map([["&quot;", '"'], ["&#x27;", "'"], ["&lt;", "<"], ["&gt;", ">"], ["&amp;", "&"]]);

/** One visitor: remembers cookies, follows no redirect. The office can be asked at several addresses. */
export class Visitor {
  /** @type {Map<string, string>} */
  #cookies = new Map();

  /** The cookies as a request carries them. */
  get cookie() {
    return [...this.#cookies].map(([name, value]) => `${name}=${value}`).join("; ");
  }

  /** Another visitor with the same cookies, such as the same browser a moment ago. */
  copy() {
    const visitor = new Visitor();
    visitor.#cookies = new Map(this.#cookies);
    return visitor;
  }

  /**
   * @param {string} address the whole address of a page
   * @param {RequestInit} [request]
   */
  async ask(address, request = {}) {
    const { origin } = new URL(address);
    const headers = { origin, "sec-fetch-site": "same-origin", cookie: this.cookie };
    const answer = await fetch(address, { ...request, headers: { ...headers, ...request.headers }, redirect: "manual", signal: AbortSignal.timeout(30_000) });
    for (const line of answer.headers.getSetCookie()) {
      const [, name = "", value = ""] = /^([^=]+)=([^;]*)/.exec(line) ?? [];
      if (value === "" || /max-age=0|expires=Thu, 01 Jan 1970/i.test(line)) this.#cookies.delete(name);
      else this.#cookies.set(name, value);
    }
    return answer;
  }

  /**
   * Signs in as the sign-in page does.
   *
   * @param {string} base the address of the office
   * @param {{ email: string, password: string }} account
   * @returns {Promise<boolean>} whether there is a session now
   */
  async signIn(base, account) {
    const { csrfToken } = /** @type {{ csrfToken: string }} */ (await (await this.ask(`${base}/api/auth/csrf`)).json());
    const body = new URLSearchParams({ ...account, csrfToken, json: "true" });
    await (await this.ask(`${base}/api/auth/callback/credentials`, { method: "POST", body })).text();
    return [...this.#cookies.keys()].some((name) => name.endsWith("next-auth.session-token"));
  }

  /**
   * Fetches a page and fills the form on it that has a given field.
   *
   * @param {string} address
   * @param {Record<string, string>} fields what is typed, by name
   * @returns {Promise<FormData>} the form as a browser without scripts sends it
   */
  async fillForm(address, fields) {
    const page = await (await this.ask(address)).text();
    const wanted = Object.keys(fields)[0] ?? "";
    const form = page.split(/<form\b/).slice(1).map((part) => part.split("</form>")[0] ?? "").find((part) => part.includes(`name="${wanted}"`));
    if (form === undefined) throw new Error(`There is no form with the field "${wanted}" at ${new URL(address).pathname}.`);
    const data = new FormData();
    for (const [input] of form.matchAll(/<input\b[^>]*type="hidden"[^>]*>/g)) {
      const attribute = (/** @type {string} */ name) => decode(new RegExp(`\\s${name}="([^"]*)"`).exec(input)?.[1] ?? "");
      data.append(attribute("name"), attribute("value"));
    }
    for (const [name, value] of Object.entries(fields)) data.set(name, value);
    return data;
  }
}

/** @param {string} text of an attribute */
function decode(text) {
  return text.replace(/&(?:quot|#x27|lt|gt|amp);/g, (entity) => ENTITIES.get(entity) ?? entity);
}
