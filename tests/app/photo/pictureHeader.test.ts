import { describe, expect, it } from "vitest";
import { pictureFault } from "../../../src/app/photo/pictureFault";
import { pictureHeader } from "../../../src/app/photo/pictureHeader";

// The first bytes of pictures, written out by the formats' own descriptions.

const bytes = (...parts: (string | number[])[]) => new Uint8Array(parts.flatMap((part) => (typeof part === "string" ? [...part].map((letter) => letter.charCodeAt(0)) : part)));
const two = (value: number) => [value >> 8, value & 255];
const four = (value: number) => [0, value >> 16, (value >> 8) & 255, value & 255];
const png = (width: number, height: number) => bytes([0x89], "PNG\r\n", [0x1a, 10], four(13), "IHDR", four(width), four(height), [8, 2, 0, 0, 0]);
const frame = (width: number, height: number) => [0xff, 0xc2, ...two(17), 8, ...two(height), ...two(width), 3];
const jpeg = (width: number, height: number) => bytes([0xff, 0xd8, 0xff, 0xe1, ...two(10)], "Exif", [0, 0, 0xff, 0xc0, 0xff, 0xff, 0xc4, ...two(3), 0], frame(width, height));

describe("pictureHeader", () => {
  it("reads width and height of every kind", () => {
    expect(pictureHeader(png(4000, 3000))).toEqual({ type: "image/png", width: 4000, height: 3000 });
    expect(pictureHeader(jpeg(7296, 5472))).toEqual({ type: "image/jpeg", width: 7296, height: 5472 });
    const riff = (form: string, rest: number[]) => bytes("RIFF", [0, 0, 0, 0], "WEBP", form, [0, 0, 0, 0], rest);
    expect(pictureHeader(riff("VP8 ", [0, 0, 0, 0x9d, 1, 0x2a, 0x20, 3, 0x58, 2]))).toEqual({ type: "image/webp", width: 800, height: 600 });
    // 14 bits each, one less than the size: 800 - 1 = 0x31f, 600 - 1 = 0x257.
    expect(pictureHeader(riff("VP8L", [0x2f, 0x1f, 0xc3, 0x95, 0]))).toEqual({ type: "image/webp", width: 800, height: 600 });
    expect(pictureHeader(riff("VP8X", [0, 0, 0, 0, 0x1f, 3, 0, 0x57, 2, 0]))).toEqual({ type: "image/webp", width: 800, height: 600 });
  });

  it("is null for what is no such picture, and without a size where the bytes end early", () => {
    for (const text of ["", "{}", "GIF89a", "%PDF-1.7", "<svg>", "RIFFxxxxWAVE"]) expect(pictureHeader(bytes(text))).toBeNull();
    for (const whole of [png(4000, 3000), jpeg(4000, 3000)]) expect(pictureHeader(whole.slice(0, 12))).toMatchObject({ width: 0, height: 0 });
  });

  it("never throws, wherever a file is cut off or spoilt", () => {
    const whole = jpeg(4000, 3000);
    for (let end = 0; end <= whole.length; end++) expect(() => pictureHeader(whole.slice(0, end))).not.toThrow();
    for (let at = 3; at < whole.length; at++) for (const value of [0, 0xff, 0xd8]) expect(() => pictureHeader(whole.with(at, value))).not.toThrow();
  });
});

describe("pictureFault", () => {
  it("lets 40 megapixels pass and no more, whatever the file says of itself", () => {
    expect(pictureFault(9e6, png(8000, 5000))).toBeNull();
    expect(pictureFault(9e6, jpeg(8000, 5001))).toEqual({ kind: "too-many-pixels", megapixels: 41 });
    expect(pictureFault(9e6, jpeg(8200, 5001))).toEqual({ kind: "too-many-pixels", megapixels: 41 });
    expect(pictureFault(900, png(65535, 65535))).toMatchObject({ kind: "too-many-pixels" });
  });

  it("names an empty, a foreign, a damaged, a huge and a tiny file", () => {
    expect(pictureFault(0, bytes())).toEqual({ kind: "empty" });
    for (const text of ["GIF89a", "<svg>", "\0\0\0\x18ftypisom"]) expect(pictureFault(20, bytes(text))).toEqual({ kind: "not-a-picture" });
    expect(pictureFault(20, bytes("%PDF-1.7"))).toEqual({ kind: "pdf" });
    for (const brand of ["heic", "heix", "mif1", "hevc"]) expect(pictureFault(20, bytes(`\0\0\0\x18ftyp${brand}`))).toEqual({ kind: "heif" });
    expect(pictureFault(20, png(10, 10).slice(0, 17))).toEqual({ kind: "damaged" });
    expect(pictureFault(200e6, png(4000, 3000))).toEqual({ kind: "too-large", megabytes: 200 });
    expect(pictureFault(200, png(60, 4000))).toEqual({ kind: "too-small" });
  });
});
