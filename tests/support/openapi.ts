import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";
import formats from "ajv-formats";

/*
 * The chat platform's own description of its interface (OpenAPI 3.1), as a judge of what the bot sends and of what the
 * loopback server answers. The document is not part of this repository: OPENAPI_DOCUMENT names it, else it is looked
 * for beside the checkout.
 */

export interface OpenapiChecker {
  /** Faults of a request body; `path` as the document writes it: `/channels/{channel_id}/messages`. */
  request(method: string, path: string, body: unknown): string[];
  answer(method: string, path: string, status: number, body: unknown): string[];
}

const beside = fileURLToPath(new URL("../../../shared/discord-openapi.json", import.meta.url));
export const openapiPath = process.env["OPENAPI_DOCUMENT"] ?? beside;

interface Operation {
  requestBody?: { content?: Record<string, unknown> };
  responses?: Record<string, { content?: Record<string, unknown>; $ref?: string }>;
}

let loaded: OpenapiChecker | "absent" | undefined;

/** undefined, with a loud warning, where the document is not there. */
export function loadOpenapi(): OpenapiChecker | undefined {
  loaded ??= readDocument();
  return loaded === "absent" ? undefined : loaded;
}

function readDocument(): OpenapiChecker | "absent" {
  if (existsSync(openapiPath))
    return createChecker(JSON.parse(readFileSync(openapiPath, "utf8")) as Document);
  console.warn(
    "NOT CHECKED AGAINST THE PLATFORM'S OPENAPI DOCUMENT: it is absent. Name it in OPENAPI_DOCUMENT.",
  );
  return "absent";
}

interface Document {
  paths: Record<string, Record<string, Operation>>;
}

function createChecker(document: Document): OpenapiChecker {
  const ajv = new Ajv2020({ strict: false, allErrors: true, logger: false });
  formats.default(ajv);
  ajv.addFormat("snowflake", /^(0|[1-9][0-9]*)$/);
  ajv.addFormat("nonce", true);
  ajv.addFormat("int32", true);
  ajv.addFormat("int64", true);
  ajv.addSchema({ $id: "platform", ...document });
  const compiled = new Map<string, ValidateFunction>();

  function check(pointer: readonly string[], body: unknown): string[] {
    const ref = `platform#/${pointer.map(escapePointer).join("/")}`;
    const validate = compiled.get(ref) ?? ajv.compile({ $ref: ref });
    compiled.set(ref, validate);
    if (validate(body)) return [];
    return (validate.errors ?? [])
      .slice(0, 6)
      .map(({ instancePath, message }) => `${instancePath || "/"} ${message}`);
  }

  return {
    request(method, path, body) {
      const operation = document.paths[path]?.[method.toLowerCase()];
      if (!operation) return [`${method} ${path} is not in the document`];
      if (!operation.requestBody?.content?.["application/json"])
        return body === undefined ? [] : ["takes no body"];
      const pointer = [
        "paths",
        path,
        method.toLowerCase(),
        "requestBody",
        "content",
        "application/json",
        "schema",
      ];
      return check(pointer, acceptPermissionText(body));
    },
    answer(method, path, status, body) {
      const operation = document.paths[path]?.[method.toLowerCase()];
      const key = operation?.responses?.[status] ? `${status}` : `${Math.floor(status / 100)}XX`;
      const response = operation?.responses?.[key];
      if (status >= 500) return [];
      if (!response) return [`${method} ${path} has no answer ${status} in the document`];
      if (status === 204) return body === undefined ? [] : ["204 with a body"];
      const name = response.$ref?.split("/").at(-1);
      const root = name
        ? ["components", "responses", name]
        : ["paths", path, method.toLowerCase(), "responses", key];
      return check([...root, "content", "application/json", "schema"], body);
    },
  };
}

const escapePointer = (part: string): string =>
  encodeURIComponent(part.replaceAll("~", "~0").replaceAll("/", "~1")).replaceAll("%40", "@");

/**
 * A false alarm of the document: permissions are bit sets written as text (its own read-me says that numbers may come as
 * text), while the schema names a number only.
 */
function acceptPermissionText(body: unknown): unknown {
  if (Array.isArray(body)) return body.map(acceptPermissionText);
  if (typeof body !== "object" || body === null || !("default_member_permissions" in body)) return body;
  const bits = body.default_member_permissions;
  return typeof bits === "string" ? { ...body, default_member_permissions: Number(bits) } : body;
}
