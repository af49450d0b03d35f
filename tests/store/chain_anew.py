# Works out the chain of a file anew, from docs/store.md alone: python3 chain_anew.py FILE
# Prints the number of links that hold and of those that do not; of names replaced on request too, where there are any.
import hashlib, sqlite3, struct, sys

BELONGING = {"gauge": [("gauge_size", "gauge")], "connected": [("connected_person", "connected")],
             "baseline": [("baseline_reading", "baseline")], "reading": [("shown", "reading")],
             "photo": [("photo_image", "photo")]}
file = sqlite3.connect(sys.argv[1])
file.row_factory = sqlite3.Row

def told(data):
    return struct.pack(">I", len(data)) + data

def cell(value):
    if isinstance(value, int):
        return b"i" + struct.pack(">q", value)
    if isinstance(value, float):
        return b"r" + struct.pack(">d", value)
    return b"t" + told(value.encode()) if isinstance(value, str) else b"b" + told(value)

def blocks(table, key, wanted):
    rows = file.execute(f"SELECT * FROM {table} WHERE {key} = ?", (wanted,))
    filled = [sorted((name.encode(), row[name]) for name in row.keys() if row[name] is not None) for row in rows]
    return sorted(told(table.encode()) + struct.pack(">I", len(cells)) +
                  b"".join(told(name) + cell(value) for name, value in cells) for cells in filled)

names = {bytes(row["replaced"]): row["reads"] for row in file.execute("SELECT * FROM name_replaced")}
holds = {True: 0, False: 0}
replaced = 0
for link in file.execute("SELECT * FROM link").fetchall():
    fact = blocks(link["kind"], "id", link["fact"])
    for table, owner in BELONGING.get(link["kind"], []):
        fact += blocks(table, owner, link["fact"])
    content = link["before"] + blocks("origin", "id", link["origin"])[0] + struct.pack(">q", link["sequence"])
    is_held = hashlib.sha256(content + b"".join(fact)).digest() == link["hash"]
    if not is_held and names.get(bytes(link["fact"])) == hashlib.sha256(b"".join(fact)).hexdigest():
        replaced += 1
    else:
        holds[is_held] += 1
print(holds[True], holds[False], *([replaced] if replaced else []))
