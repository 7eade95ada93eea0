# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""The published schema of session.json against the code: the same fields, words and units; it passes what the
code writes and fails what is spoilt.

session_file_schema.py TOOL SCHEMA
"""

import copy
import json
import subprocess
import sys
import unittest

import jsonschema

TOOL, SCHEMA_FILE = sys.argv[1:3]
with open(SCHEMA_FILE, encoding="utf-8") as file:
    SCHEMA = json.load(file)
VALIDATOR = jsonschema.Draft202012Validator(SCHEMA)


def tool(*args):
    return subprocess.run([TOOL, *args], check=True, capture_output=True, text=True).stdout


def resolved(schema):
    """The schema with its reference followed; what stands beside the reference wins."""
    if "$ref" not in schema:
        return schema
    target = SCHEMA["$defs"][schema["$ref"].rsplit("/", 1)[1]]
    return {**resolved(target), **{k: v for k, v in schema.items() if k != "$ref"}}


def shape_of(schema):
    """What the schema allows, in the words of the tool's `fields`."""
    name = schema.get("$ref", "").rsplit("/", 1)[-1]
    schema = resolved(schema)
    if name in ("id", "time"):
        return {"kind": name}
    if name == "digits":
        return {"kind": "text"}
    if "enum" in schema:
        return {"kind": "word", "words": schema["enum"]}
    if schema["type"] == "array":
        return {"kind": "list", "of": shape_of(schema["items"])}
    if schema["type"] != "object":
        return {"kind": {"string": "text"}.get(schema["type"], schema["type"])}
    properties = schema["properties"]
    if list(properties) == ["digits", "unit"]:
        return {"kind": "quantity", "units": properties["unit"]["enum"]}
    required = schema.get("required", [])
    fields = {key: {**shape_of(value), "required": key in required} for key, value in properties.items()}
    return {"kind": "object", "fields": fields}


# Text and lists that the code reads when they are missing and the model then refuses as empty; media types are
# words to the schema and text to the code.
STRICTER = {"engine.name", "engine.cylinders", "adapters.name", "testers.name", "attachments.sha256",
            "attachments.media_type", "price.digits"}


class Fields(unittest.TestCase):
    maxDiff = None

    def compare(self, ours, theirs, place):
        where = ".".join(place)
        tail = ".".join(place[-2:])
        if tail == "attachments.media_type":
            self.assertEqual(ours["kind"], "text")
            self.assertEqual(theirs["kind"], "word")
        else:
            self.assertEqual(ours["kind"], theirs["kind"], where)
        for key in ("words", "units"):
            if key in ours:
                self.assertEqual(ours[key], theirs[key], where)
        if "required" in ours and tail not in STRICTER:
            self.assertEqual(ours["required"], theirs["required"], where)
        if ours["kind"] == "object":
            self.assertEqual(list(ours["fields"]), list(theirs["fields"]), where)
            for name, field in ours["fields"].items():
                self.compare(field, theirs["fields"][name], place + [name])
        if ours["kind"] == "list":
            self.compare(ours["of"], theirs["of"], place)

    def test_schema_and_code_name_the_same(self):
        schema = shape_of(SCHEMA)
        del schema["fields"]["format"], schema["fields"]["version"]
        self.compare(json.loads(tool("fields")), schema, [])

    def test_the_comparison_notices(self):
        code = json.loads(tool("fields"))
        for spoil in (lambda f: f.pop("bore"), lambda f: f["fuel"]["words"].append("gas"),
                      lambda f: f.update(torque={"kind": "text", "required": False}),
                      lambda f: f["bore"]["fields"]["value"]["units"].pop()):
            changed = copy.deepcopy(code)
            spoil(changed["fields"]["engine"]["fields"])
            schema = shape_of(SCHEMA)
            del schema["fields"]["format"], schema["fields"]["version"]
            with self.assertRaises(AssertionError):
                self.compare(changed, schema, [])

    def test_every_field_is_described(self):
        def walk(schema, where):
            for name, field in schema.get("properties", {}).items():
                if where.split("/")[-1] not in ("digits", "unit"):
                    self.assertTrue(resolved(field).get("description"), f"{where}/{name}")
                walk(field, f"{where}/{name}")

        walk(SCHEMA, "")
        for name, schema in SCHEMA["$defs"].items():
            self.assertTrue(schema.get("description"), name)
            walk(schema, name)


class Documents(unittest.TestCase):
    def test_schema_is_one(self):
        jsonschema.Draft202012Validator.check_schema(SCHEMA)

    def test_what_we_write_passes(self):
        for seed in range(1, 300, 15):
            document = json.loads(tool("json", str(seed)))
            errors = [f"{e.json_path}: {e.message}" for e in VALIDATOR.iter_errors(document)]
            self.assertEqual(errors, [], seed)

    def test_unknown_fields_pass(self):
        document = json.loads(tool("json", "1"))
        document["later"] = document["engine"]["later"] = {"x": 1}
        self.assertTrue(VALIDATOR.is_valid(document))

    def spoilt(self, document, schema, top):
        """Yields (what, the whole document with one thing spoilt)."""
        schema = resolved(schema)
        if isinstance(document, dict):
            for name in schema.get("required", []):
                kept = document.pop(name)
                yield f"without {name}", top
                document[name] = kept
            for name, value in list(document.items()):
                if name not in schema["properties"]:
                    continue
                below = schema["properties"][name]
                for wrong in (None, 0.5, [[]], {}, True, "nonsense \0"):
                    if VALIDATOR.evolve(schema={**below, "$defs": SCHEMA["$defs"]}).is_valid(wrong):
                        # Only free text may be anything of its type, and objects without required fields.
                        free = resolved(below)
                        self.assertIn(free["type"], ("string", "object", "boolean", "array"), name)
                        self.assertFalse(free.get("required") or free.get("pattern"), name)
                        continue
                    document[name] = wrong
                    yield f"{name} = {wrong!r}", top
                document[name] = value
                yield from self.spoilt(value, below, top)
        elif isinstance(document, list):
            for item in document[:1]:
                yield from self.spoilt(item, schema["items"], top)

    def test_what_is_spoilt_fails(self):
        document = json.loads(tool("json", "7"))
        count = 0
        for what, top in self.spoilt(document, SCHEMA, document):
            count += 1
            self.assertFalse(VALIDATOR.is_valid(top), what)
        self.assertGreater(count, 300)
        self.assertTrue(VALIDATOR.is_valid(document))


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
