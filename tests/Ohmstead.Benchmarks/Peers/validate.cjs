// What a person writes in an evening: the front matter of each record is read and held against the schema, and nothing is recomputed.
// node validate.cjs SCHEMA FOLDER; NODE_PATH names the folder of js-yaml and, where there is one, of ajv.
"use strict";

const fs = require("node:fs");
const path = require("node:path");
const yaml = require("js-yaml");

const [schemaFile, folder] = process.argv.slice(2);
const schema = JSON.parse(fs.readFileSync(schemaFile, "utf8"));
const validate = validator();
let records = 0;
let wrong = 0;

for (const name of fs.readdirSync(folder).sort()) {
  if (!name.endsWith(".md")) {
    continue;
  }

  const trouble = read(fs.readFileSync(path.join(folder, name), "utf8"));
  records++;
  if (trouble) {
    wrong++;
    console.log(`${name}: ${trouble}`);
  }
}

console.log(`${records} records, ${wrong} wrong`);
process.exitCode = wrong === 0 ? 0 : 1;

function read(text) {
  const head = /^---\n([\s\S]*?\n)---(?:\n|$)/.exec(text);
  if (!head) {
    return "no front matter";
  }

  try {
    // Days stay text, as the schema wants them: the default schema of the library would make dates of them.
    const data = yaml.load(head[1], { schema: yaml.CORE_SCHEMA });
    return validate(data);
  } catch (error) {
    return error.message.split("\n")[0];
  }
}

function validator() {
  let Ajv;
  try {
    Ajv = require("ajv");
  } catch {
    return (data) => (data !== null && typeof data === "object" ? null : "no mapping");
  }

  const ajv = new (Ajv.default ?? Ajv)({ allErrors: true, strict: false });
  const isValid = ajv.compile(schema);
  return (data) => (isValid(data) ? null : ajv.errorsText(isValid.errors));
}
