"""Reads a PNG file of greys as ISO/IEC 15948:2004 says, every check sum tried, and prints what it holds."""

import struct
import sys
import zlib

with open(sys.argv[1], "rb") as file:
    data = file.read()
assert data[:8] == b"\x89PNG\r\n\x1a\n", "signature"
chunks = []
place = 8
while place < len(data):
    length, name = struct.unpack_from(">I4s", data, place)
    body = data[place + 8 : place + 8 + length]
    (check,) = struct.unpack_from(">I", data, place + 8 + length)
    assert check == zlib.crc32(name + body), name
    chunks.append((name.decode("ascii"), body))
    place += length + 12
held = dict(chunks)
print(" ".join(name for name, _ in chunks))
width, height, bits, colour, packing, filters, interlace = struct.unpack(">IIBBBBB", held["IHDR"])
assert (packing, filters, interlace) == (0, 0, 0)
print(f"{width} x {height}, {bits} bits of colour type {colour}")
print("%d x %d a unit of kind %d" % struct.unpack(">IIB", held["pHYs"]))
keyword, rest = held["iTXt"].split(b"\0", 1)
assert rest[:2] == b"\0\0", "not packed"
language, translated, text = rest[2:].split(b"\0", 2)
print(f"{keyword.decode('latin-1')}: {text.decode('utf-8')}")
rows = zlib.decompress(held["IDAT"])
length = 1 + (width + 1) // 2
assert len(rows) == height * length, "every row"
check = 0
for start in range(0, len(rows), length):
    assert rows[start] == 0, "not filtered"
    greys = [half * 17 for byte in rows[start + 1 : start + length] for half in (byte >> 4, byte & 15)]
    check = zlib.crc32(bytes(greys[:width]), check)
print(check)
