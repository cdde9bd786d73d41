// Read by whatever Node the machine has, so the syntax stays that of 2017.
import { runCommand } from "./launch/entry.mjs";

runCommand(function () {
  return import("./archive/run-backup.mjs").then(function (tool) {
    return tool.runBackup(process.argv.slice(2));
  });
});
