// Called by the editor inside its extension host.
const { readdirSync } = require("node:fs");
const path = require("node:path");
const Mocha = require("mocha");

exports.run = () =>
  new Promise((resolve, reject) => {
    const mocha = new Mocha({ timeout: 60_000, reporter: "tap", reporterOptions: { tapVersion: "13" } });
    for (const name of readdirSync(__dirname).filter((one) => one.endsWith(".test.cjs")).sort()) {
      mocha.addFile(path.join(__dirname, name));
    }
    mocha.run((failures) => (failures === 0 ? resolve() : reject(new Error(`${failures} failed`))));
  });
