// Starts that can't succeed say why in one sentence, end with a code of their own and leave nothing running.
import { execFile, spawnSync } from "node:child_process";
import { once } from "node:events";
import { chmod, mkdir, mkdtemp, readFile, rm, statfs, writeFile } from "node:fs/promises";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { afterAll, beforeAll, expect, test } from "vitest";
import { findFreePort } from "../../scripts/launch/ports.mjs";
import { OLDEST_NODE, refuseOldNode } from "../../scripts/launch/node-version.mjs";
import { PROJECT_FOLDER } from "../../scripts/run-prisma.mjs";
import { launch, untilServing } from "./launcher";

const NOBODY = 65_534;
const BYTES_PER_MEGABYTE = 1024 * 1024;
const isRoot = process.getuid?.() === 0;

let parent: string;

beforeAll(async () => {
  parent = await mkdtemp(join(tmpdir(), "halfpass-refusals-"));
  // Root lends the database to another user, who must be able to enter.
  await chmod(parent, 0o711);
});

afterAll(() => rm(parent, { recursive: true, force: true }));

test("a Node that is too old is refused with the one that is needed, and every newer one is not", async () => {
  for (const version of ["18.20.4", "20.18.3", "4.9.1", "v20.9.0"]) expect(refuseOldNode(version)).toContain(`Halfpass needs Node ${OLDEST_NODE} or newer`);
  for (const version of [OLDEST_NODE, "20.20.0", "22.0.0", "v24.1.0"]) expect(refuseOldNode(version)).toBe("");
  const { engines } = JSON.parse(await readFile(join(PROJECT_FOLDER, "package.json"), "utf8")) as { engines: { node: string } };
  expect(OLDEST_NODE.startsWith(engines.node.replace(">=", ""))).toBe(true);
});

test("a taken port is named, and nothing is begun", async () => {
  const other = createServer().listen({ port: await findFreePort(), host: "127.0.0.1" });
  await once(other, "listening");
  const address = other.address();
  const port = typeof address === "object" && address !== null ? address.port : 0;
  const launcher = launch({ data: join(parent, "port"), port });
  expect(await launcher.ended).toBe(1);
  expect(launcher.said()).toContain(`Port ${port} is already taken by another program`);
  expect(launcher.said()).not.toContain("Making the database");
  other.close();
});

test("an unknown option is refused with the ones there are", async () => {
  const launcher = launch({ data: join(parent, "option"), port: await findFreePort(), args: ["--vacant"] });
  expect(await launcher.ended).toBe(2);
  expect(launcher.said()).toContain("npm start takes no options but --empty");
});

test("a data folder that can't be written to is named", async () => {
  const closed = join(parent, "closed");
  await mkdir(closed, { mode: 0o500 });
  const scripts = new URL("../../scripts/launch/", import.meta.url);
  // Root may write everywhere, so it becomes someone else, after it has read what that one may not be able to read.
  const program = `
    const { prepareDataFolder } = await import(${JSON.stringify(new URL("data-folder.mjs", scripts).href)});
    if (process.getuid() === 0) { process.setgroups([]); process.setgid(${NOBODY}); process.setuid(${NOBODY}); }
    try { prepareDataFolder({ dataFolder: process.argv[1], outside: null }); } catch (error) { console.log(error.name, error.message); }`;
  const { stdout } = await promisify(execFile)(process.execPath, ["--input-type=module", "-e", program, closed], { cwd: "/" });
  expect(stdout).toContain(`Refusal Halfpass can't write to its data folder ${closed} (EACCES)`);
});

/** Mounts a small file system of memory, or answers false where this user or this machine can't. */
function mountSmall(folder: string, megabytes: number): boolean {
  return isRoot && spawnSync("mount", ["-t", "tmpfs", "-o", `size=${megabytes}m,mode=755`, "halfpass-test", folder]).status === 0;
}

const trial = await mkdtemp(join(tmpdir(), "halfpass-mount-"));
const canMount = mountSmall(trial, 1);
if (canMount) spawnSync("umount", [trial]);
await rm(trial, { recursive: true });

if (canMount) {
  test("a disk that is too small for the database is refused before anything is half made", async () => {
    const disk = join(parent, "small");
    await mkdir(disk);
    expect(mountSmall(disk, 200)).toBe(true);
    try {
      const launcher = launch({ data: join(disk, "data"), port: await findFreePort(), args: ["--empty"] });
      expect(await launcher.ended).toBe(1);
      expect(launcher.said()).toContain("The disk is too full");
    } finally {
      spawnSync("umount", [disk]);
    }
  });

  test("a disk that has filled up is refused at the next start, and with room made everything is there again", async () => {
    const disk = join(parent, "filling");
    await mkdir(disk);
    expect(mountSmall(disk, 500)).toBe(true);
    const start = { data: join(disk, "data"), port: await findFreePort() };
    try {
      const first = launch({ ...start, args: ["--empty"] });
      await untilServing(first);
      first.process.kill("SIGINT");
      expect(await first.ended).toBe(0);
      const { bavail, bsize } = await statfs(disk);
      await writeFile(join(disk, "ballast"), Buffer.alloc(bavail * bsize - 10 * BYTES_PER_MEGABYTE));
      const second = launch(start);
      expect(await second.ended).toBe(1);
      expect(second.said()).toContain("The disk is too full");
      await rm(join(disk, "ballast"));
      const third = launch(start);
      await untilServing(third);
      third.process.kill("SIGINT");
      expect(await third.ended).toBe(0);
    } finally {
      spawnSync("umount", [disk]);
    }
  });
} else {
  process.stdout.write("Left out: the tests of a full disk, because this user can't mount a small one.\n");
}
