import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/* Certificates made by OpenSSL, as a school's own office would make one: they sign for themselves. */

export interface MadeCertificate {
  readonly certificate: string;
  readonly key: string;
  /** What a browser that trusts it holds. */
  readonly pem: string;
}

/** `20260115000000Z`, as X.509 writes it. */
const asTime = (at: number): string => new Date(at).toISOString().replace(/[-:T]|\.\d+/g, "");

const DAY_MS = 86_400_000;
const POLICY =
  "[ca]\ndefault_ca=own\n[own]\ndatabase=index.txt\nserial=serial\nnew_certs_dir=.\npolicy=any\ndefault_md=sha256\n[any]\n";

/** For this computer's own names, from `from` until `until` (ms since the epoch). */
export function makeCertificate({
  from = Date.now() - DAY_MS,
  until = Date.now() + 90 * DAY_MS,
  names = "DNS:darkroom.example,DNS:localhost,IP:127.0.0.1",
} = {}): MadeCertificate {
  const folder = mkdtempSync(join(tmpdir(), "sinkside-tls-"));
  const run = (words: string): void =>
    void execFileSync("openssl", words.split(" "), { cwd: folder, stdio: ["ignore", "ignore", "pipe"] });
  writeFileSync(join(folder, "ca.cnf"), `${POLICY}commonName=supplied\n[names]\nsubjectAltName=${names}\n`);
  writeFileSync(join(folder, "index.txt"), "");
  writeFileSync(join(folder, "serial"), "01");
  const curve = "-newkey ec -pkeyopt ec_paramgen_curve:prime256v1";
  run(`req -new ${curve} -nodes -keyout key.pem -out request.pem -subj /CN=darkroom.example`);
  const days = `-startdate ${asTime(from)} -enddate ${asTime(until)}`;
  run(
    `ca -batch -selfsign -config ca.cnf -keyfile key.pem -notext -in request.pem -out cert.pem -extensions names ${days}`,
  );
  const certificate = join(folder, "cert.pem");
  return { certificate, key: join(folder, "key.pem"), pem: readFileSync(certificate, "utf8") };
}
