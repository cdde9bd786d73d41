// Read by whatever Node the machine has, so the syntax stays that of 2017.
import { runCommand } from "./launch/entry.mjs";

runCommand(function () {
  return import("./launch/run-company.mjs").then(function (company) {
    return company.runCompany(process.argv.slice(2));
  });
});
