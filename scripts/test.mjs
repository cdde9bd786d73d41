// The whole test run, in a fresh clone too: `npm test`, or `npm test -- lint domain` for some of its stages.
// Read by whatever Node the machine has, so the syntax stays that of 2017 and nothing is imported before
// the version is known to be new enough.
import { runOnNewNode } from "./launch/entry.mjs";

const FAILED = "0 passed, 1 failed\n";

const isRun = runOnNewNode(function () {
  import("./test/run-tests.mjs")
    .then(function (tests) {
      return tests.runTests(process.argv.slice(2));
    })
    .catch(function (error) {
      process.stderr.write(error.stack + "\n");
      process.stdout.write(FAILED);
      process.exitCode = 1;
    });
});
if (!isRun) process.stdout.write(FAILED);
