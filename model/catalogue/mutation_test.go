package catalogue

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// unnoticed are figures that nothing holds when they are changed by 5 %, and why. There are none.
var unnoticed = map[string]string{}

// TestEveryFigureIsHeld changes each figure of the tables by 5 %, one at a time, and reads its
// entry with the program's own reader: it refuses it, or the second typing disagrees. A whole
// number changes by one at the least, a zero becomes 0.05.
func TestEveryFigureIsHeld(t *testing.T) {
	files, err := data.ReadDir("data")
	if err != nil {
		t.Fatal(err)
	}
	tried, refused, survived := 0, 0, map[string]bool{}
	for _, f := range files {
		if !strings.HasSuffix(f.Name(), ".toml") || f.Name() == "source.toml" {
			continue
		}
		b, err := data.ReadFile("data/" + f.Name())
		if err != nil {
			t.Fatal(err)
		}
		for _, block := range regexp.MustCompile(`(?m)^\[\[`).Split(string(b), -1)[1:] {
			block = "[[" + block
			if strings.HasPrefix(block, "[[source") {
				continue
			}
			sound, ok := signature(t, block)
			if !ok {
				t.Fatalf("%s: an entry is refused as it stands:\n%s", f.Name(), block)
			}
			for _, m := range figuresIn(block) {
				tried++
				got, ok := signature(t, block[:m.from]+changed(m.text)+block[m.to:])
				switch {
				case !ok:
					refused++
				case got == sound:
					name := fmt.Sprintf("%s %s: %s", f.Name(), block[:min(60, len(block))], m.text)
					if survived[name] = true; unnoticed[name] == "" {
						t.Errorf("nothing notices %s in\n%.300s", m.text, block)
					}
				}
			}
		}
	}
	for name := range unnoticed {
		if !survived[name] {
			t.Errorf("noticed after all: %s", name)
		}
	}
	t.Logf("%d figures changed by 5 %%: %d refused by the reader, %d told by the second typing, %d pass", tried, refused,
		tried-refused-len(survived), len(survived))
}

// signature is what the second typing says of an entry read alone: every figure that differs.
// false where the reader refuses it.
func signature(t *testing.T, block string) (string, bool) {
	t.Helper()
	c, err := Read(strings.NewReader(block), "one.toml")
	if err != nil {
		return "", false
	}
	var b strings.Builder
	for entry, cells := range cellsOf(c) {
		if strings.HasPrefix(entry, "insert ") && !strings.HasPrefix(entry, "insert "+c.Inserts[entry[7:]].ID) {
			continue
		}
		for _, x := range cells {
			if x.away() {
				fmt.Fprintf(&b, "%s %s %v\n", entry, x.key, x.got)
			}
		}
	}
	return b.String(), true
}

// figure is where a number stands in the text of an entry.
type figure struct {
	from, to int
	text     string
}

var (
	number10 = regexp.MustCompile(`-?\d+(\.\d+)?`)
	place    = regexp.MustCompile(`"\S+ (-?[\d.]+) (-?[\d.]+)"`)
	quoted   = regexp.MustCompile(`"[^"]*"`)
)

// figuresIn finds the numbers of an entry. What stands in quotation marks is a name or a
// text, and the gauges among them have a test of their own; the places of a face are numbers.
func figuresIn(block string) []figure {
	var out []figure
	for _, m := range place.FindAllStringSubmatchIndex(block, -1) {
		if strings.HasPrefix(block, "[[face") {
			out = append(out, figure{m[2], m[3], block[m[2]:m[3]]}, figure{m[4], m[5], block[m[4]:m[5]]})
		}
	}
	bare := quoted.ReplaceAllStringFunc(block, func(s string) string { return strings.Repeat("\"", len(s)) })
	at := 0
	for line := range strings.Lines(bare) {
		if key, _, ok := strings.Cut(line, "="); ok && !strings.HasPrefix(line, "#") {
			from := at
			if !strings.HasPrefix(strings.TrimSpace(line), "{") {
				from += len(key) // digits of a key are none
			}
			for _, m := range number10.FindAllStringIndex(bare[from:at+len(line)], -1) {
				if m[0] > 0 && bare[from+m[0]-1] == '_' {
					continue
				}
				out = append(out, figure{from + m[0], from + m[1], bare[from+m[0] : from+m[1]]})
			}
		}
		at += len(line)
	}
	return out
}

// changed is a number that is 5 % more.
func changed(text string) string {
	if n, err := strconv.Atoi(text); err == nil {
		return strconv.Itoa(n + max(1, n/20))
	}
	f, _ := strconv.ParseFloat(text, 64)
	if f == 0 {
		return "0.05"
	}
	return strconv.FormatFloat(f*1.05, 'f', -1, 64)
}
