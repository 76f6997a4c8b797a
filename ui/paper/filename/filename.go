// Package filename says how files of a sheet are called. Two numbers or revisions that differ in anything give two
// names, on a disk that takes a small letter for a capital one too: a name that says all of its text is the text;
// any other ends in "~" and a hash of it.
package filename

import (
	"crypto/sha256"
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"
)

// mostName is how much of a number is in a name, bytes: with revision, hash and the name of a
// list it stays under the 255 that a disk takes.
const mostName = 60

// Sheet is number and revision, spelled so that any disk takes it. The revision is kept
// however long the number is.
func Sheet(number, revision string) string {
	shown := strings.Trim(readable(number, mostName)+"-"+readable(revision, mostName/2), "-.")
	if shown == "" {
		shown = "harness"
	}
	switch {
	case number == "" && revision == "":
		return shown
	case plain(number) && revision == "" && !strings.Contains(number, "-"), // else it could be a number and a revision
		plain(number) && plain(revision) && !strings.Contains(revision, "-"):
		return shown
	}
	return shown + "~" + hashed(number, revision)
}

// OnDisk is a text as a file may be called.
func OnDisk(text string) string {
	if plain(text) {
		return text
	}
	shown := strings.Trim(readable(text, mostName), "-.")
	if shown == "" {
		shown = "harness"
	}
	return shown + "~" + hashed(text)
}

// plain reports whether a text can be its own name: short, of signs that are the same on every
// disk.
func plain(text string) bool {
	return text != "" && len(text) <= mostName/2 && strings.Trim(text, "-.") == text && !reserved(text) &&
		strings.Trim(text, "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_.") == ""
}

// reserved reports whether a name means a device on some disks.
func reserved(name string) bool {
	name, _, _ = strings.Cut(name, ".")
	switch name {
	case "CON", "PRN", "AUX", "NUL":
		return true
	}
	return len(name) == 4 && (strings.HasPrefix(name, "COM") || strings.HasPrefix(name, "LPT"))
}

// readable is what can be read of a text in a name: its letters and digits, cut at so many
// bytes.
func readable(text string, most int) string {
	out := strings.Map(func(r rune) rune {
		switch {
		case r == utf8.RuneError:
			return '-'
		case unicode.IsLetter(r), unicode.IsDigit(r), r == '-', r == '_', r == '.':
			return r
		}
		return '-'
	}, text)
	for len(out) > most {
		_, n := utf8.DecodeLastRuneInString(out)
		out = out[:len(out)-n]
	}
	return out
}

// hashed is enough of a hash of texts to tell them from any others of a shop; none runs into
// the next.
func hashed(texts ...string) string {
	h := sha256.New()
	for _, t := range texts {
		fmt.Fprintf(h, "%d %s", len(t), t)
	}
	return fmt.Sprintf("%x", h.Sum(nil))[:12]
}
