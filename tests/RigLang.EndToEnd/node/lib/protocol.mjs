// Holds messages against the protocol, in either direction.
import Ajv from "ajv";
import { protocolSchemas } from "./schemas.mjs";

const { definitions, requests, notifications } = protocolSchemas();
const ajv = new Ajv({ strict: false, allErrors: true });
ajv.addSchema({ $id: "protocol", definitions });

/** Watches one connection. Everything that isn't the protocol's is kept in `breaches`, in words. */
export class ProtocolWatch {
  breaches = [];
  seen = new Set();
  #asked = { client: new Map(), server: new Map() };

  /** @param from "client" or "server" */
  see(from, message) {
    if (message.jsonrpc !== "2.0") {
      this.#breach(from, message, "jsonrpc is not 2.0");
    }
    if (message.method === undefined) {
      this.#seeResponse(from, message);
    } else if (message.id === undefined) {
      this.#seeNotification(from, message);
    } else {
      this.#seeRequest(from, message);
    }
  }

  #seeRequest(from, message) {
    this.seen.add(message.method);
    if (message.method.startsWith("riglang/")) {
      this.#asked[from].set(message.id, {}); // a request of our own, beside the protocol
      return;
    }
    const schema = requests[message.method];
    if (schema === undefined) {
      this.#breach(from, message, "no such request");
      return;
    }
    this.#asked[from].set(message.id, schema);
    this.#check(from, message, schema.params, message.params);
  }

  #seeNotification(from, message) {
    this.seen.add(message.method);
    const schema = notifications[message.method];
    if (schema === undefined) {
      this.#breach(from, message, "no such notification");
      return;
    }
    this.#check(from, message, schema.params, message.params);
  }

  #seeResponse(from, message) {
    const asker = this.#asked[from === "client" ? "server" : "client"];
    const schema = asker.get(message.id);
    asker.delete(message.id);
    if ("error" in message) {
      const { code, message: text } = message.error ?? {};
      if (!Number.isInteger(code) || typeof text !== "string" || "result" in message) {
        this.#breach(from, message, "a malformed error");
      }
    } else if (!("result" in message)) {
      this.#breach(from, message, "neither a result nor an error");
    } else if (schema === undefined) {
      this.#breach(from, message, "an answer that nobody asked for");
    } else if ("result" in schema) {
      this.#check(from, message, schema.result, message.result);
    }
  }

  #check(from, message, definition, value) {
    if (definition === undefined) {
      if (value !== undefined && value !== null && JSON.stringify(value) !== "{}" && JSON.stringify(value) !== "[]") {
        this.#breach(from, message, "takes no parameters");
      }
      return;
    }
    const validate = ajv.getSchema(`protocol#/definitions/${definition}`);
    if (!validate(value)) {
      this.#breach(from, message, ajv.errorsText(validate.errors, { dataVar: "" }));
    }
  }

  #breach(from, message, what) {
    this.breaches.push(`${from}: ${message.method ?? `answer ${message.id}`}: ${what}\n${JSON.stringify(message).slice(0, 2000)}`);
  }
}
