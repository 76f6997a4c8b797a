package file_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"contralay/model/file"
)

// What can be drawn but not built loads, and is no business of the loader.
func TestLoads(t *testing.T) {
	wire := func(keys string) string {
		return whole + "\n[[wire]]\nid = \"2\"\nspec = \"x\"\nsize = \"22\"\n" + keys + "\n"
	}
	layer := func(of string) string { return whole + "\n  [[branch.layer]]\n  of = " + of + "\n" }
	for _, tt := range []struct{ name, text string }{
		{"nothing but the format", "format = 1"},
		{"wire without an end", wire("")},
		{"wire with one end", wire(`from = "P1:A"`)},
		{"wire with an empty end", wire(`from = ""`)},
		{"cavity that nobody knows", wire(`from = "P1:such"`)},
		{"cavity with a colon", wire(`from = "P1:a:b"`)},
		{"two wires in a cavity", wire("from = \"P1:A\"\nto = \"P1:A\"")},
		{"layer member not on the path", layer(`["1"]`)},
		{"layer of nothing", layer("[]")},
		{"branches that do not touch", whole +
			"[[branch]]\nid = \"T2\"\nfrom = \"P2\"\nto = \"P3\"\nlength_mm = 1\n[[termination]]\nid = \"P3\"\n"},
		{"a branch that is not measured yet", strings.Replace(whole, "length_mm = 100", "length_mm = 0", 1)},
		{"unit of no wires", whole + "[[unit]]\nid = \"U\"\nwires = []\n"},
		{"unit of a wire that lies alone elsewhere",
			layer(`["1"]`) + "[[unit]]\nid = \"U\"\nwires = [\"1\"]\ndrain_from = \"shell\"\ndrain_to = \"P2:x\"\n"},
		{"Windows line ends and a byte order mark", "\xef\xbb\xbf" + strings.ReplaceAll(whole, "\n", "\r\n")},
		{"empty lists of tables", "format = 1\nwire = []\nbranch = []\n"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			d, err := file.Parse([]byte(tt.text), "f.toml")
			if err != nil {
				t.Fatal(err)
			}
			again(t, d)
		})
	}
}

// again checks that what was read is written, read and written alike.
func again(t interface {
	Helper()
	Fatalf(string, ...any)
}, d file.Document) {
	t.Helper()
	text := file.Encode(d)
	back, err := file.Parse(text, "again.toml")
	if err != nil {
		t.Fatalf("what was written does not load: %v\n%s", err, text)
	}
	d.LostComments = 0 // a save loses them
	if diff := cmp.Diff(d, back); diff != "" {
		t.Fatalf("read back differently (-before +after):\n%s\n%s", diff, text)
	}
	if diff := cmp.Diff(string(text), string(file.Encode(back))); diff != "" {
		t.Fatalf("written differently (-first +second):\n%s", diff)
	}
}

// One way to write: whatever the spelling, the text comes out like this.
func TestSpelling(t *testing.T) {
	const in = `format = 1
rules = { lay_ratio = 12, drop_max_v = 5e-1, leaver_weight = 1e-9, tail_first_mm = 1e9, ambient_c = -0.0 }
termination = [ { contacts = { b = ['1'], "a c" = [] }, "id" = 'P"1' } ]
breakout = [{id="J"}]
[[branch]]
length_mm = 1_000
to = "J"
from = """P"1"""
id = "T"
`
	const want = `format = 1

[rules]
lay_ratio     = 12.0
leaver_weight = 1.0e-09
tail_first_mm = 1000000000.0
ambient_c     = 0.0
drop_max_v    = 0.5

[[termination]]
id       = "P\"1"
contacts = { "a c" = [], "b" = ["1"] }

[[breakout]]
id = "J"

[[branch]]
id        = "T"
from      = "P\"1"
to        = "J"
length_mm = 1000.0
`
	d, err := file.Parse([]byte(in), "f.toml")
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(want, string(file.Encode(d))); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
	again(t, d)
}

func TestHead(t *testing.T) {
	for _, tt := range []struct {
		name, text, head string
		lost             int
	}{
		{"none", "format = 1\n", "", 0},
		{"directly above", "# a\nformat = 1\n", "# a\n", 0},
		{"blank lines inside and after", "# a\n\n  # b  \n\nformat = 1\n", "# a\n\n  # b\n\n", 0},
		{"blank lines before", "\n\n# a\nformat = 1\n", "# a\n", 0},
		{"Windows line ends", "# a\r\n\r\n# b\r\nformat = 1\r\n", "# a\n\n# b\n", 0},
		{"blank lines only", "\n\nformat = 1\n", "", 0},
		{"others are lost", "# a\nformat = 1 # b\n\n# c\n[harness]\nname = \"# no\" # d\nnote = '''\n# no'''\n[rules]\nfiller_stock_mm = " +
			"[ # e\n# f\n1]\n", "# a\n", 5},
	} {
		t.Run(tt.name, func(t *testing.T) {
			d, err := file.Parse([]byte(tt.text), "f.toml")
			if err != nil {
				t.Fatal(err)
			}
			if d.Head != tt.head || d.LostComments != tt.lost {
				t.Errorf("head %q, %d lost; want %q, %d", d.Head, d.LostComments, tt.head, tt.lost)
			}
			again(t, d)
		})
	}
}

// A head that a program made up cannot break the file.
func TestHeadOfAnyText(t *testing.T) {
	got := string(file.Encode(file.Document{Head: "\nformat = 2\n# b\x00\r\nlast\xff"}))
	const want = "# format = 2\n# b\n# last\uFFFD\nformat = 1\n"
	if got != want {
		t.Errorf("%q, want %q", got, want)
	}
}

func TestTooLarge(t *testing.T) {
	r := strings.NewReader("format = 1\n" + strings.Repeat("#\n", 4<<20))
	_, err := file.Read(r, "f.toml")
	if err == nil || err.Error() != "f.toml: the file is larger than 8 MiB: that is not a harness" {
		t.Errorf("%v", err)
	}
}
