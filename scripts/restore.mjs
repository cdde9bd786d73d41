// Read by whatever Node the machine has, so the syntax stays that of 2017.
import { runCommand } from "./launch/entry.mjs";

runCommand(function () {
  return import("./archive/run-restore.mjs").then(function (tool) {
    return tool.runRestore(process.argv.slice(2));
  });
});
