package catalogue

import (
	"errors"
	"fmt"
	"io"
	"regexp"
	"strings"
	"testing"
	"testing/iotest"
)

const goodWire = `[[wire]]
spec       = "X"
size       = "22"
over_mm    = 1.1
area_mm2   = 0.38
ohm_per_km = 53
rated_c    = 150
source     = "ten side by side"
standing   = "house"
`

const goodTube = `[[tube]]
id            = "T 9.5"
kind          = "T"
supplied_mm   = 9.5
recovered_mm  = 4.8
wall_mm       = 0.9
recovery_c    = 175
service_min_c = -75
service_max_c = 150
length_change = 0.1
flexible      = true
source        = "the reel's sheet"
standing      = "published"
`

const goodInsert = `[[insert]]
id       = "18-32"
aliases  = ["19-32"]
contacts = [{ size = "20", count = 3 }]
source   = "the drawing"
standing = "house"
`

const goodContact = `[[contact]]
size         = "20"
max_a        = 7.5
largest_awg  = "20"
smallest_awg = "24"
source       = "the sheet"
standing     = "published"
`

// with changes one line of a good entry: "" takes it out.
func with(entry, key, line string) string {
	var out []string
	done := false
	for _, l := range strings.Split(entry, "\n") {
		if strings.HasPrefix(l, key+" ") {
			done = true
			l = line
		}
		out = append(out, l)
	}
	if !done {
		out = append(out, line)
	}
	return strings.Join(out, "\n")
}

func TestGoodFilesRead(t *testing.T) {
	c := mustRead(t, goodWire+goodTube+goodInsert+goodContact+`[[transition]]
id       = "Y 1"
outlets  = [[20, 10, 30], [12.5, 6, 25], [12.5, 6, 25]]
source   = "the maker's drawing"
standing = "published"`)
	w, _ := c.Wire("X", "22")
	if w.OverStanding != House || w.OhmStanding != House || w.RatedStanding != House {
		t.Errorf("standings left out are not the entry's: %+v", w)
	}
	if y, ok := c.Transition("Y 1"); !ok || len(y.Outlets) != 3 || y.Outlets[0] != (Outlet{20, 10, 30}) {
		t.Errorf("transition %+v", y)
	}
	if i, ok := c.Insert("19-32"); !ok || i.ID != "18-32" || i.NamesStanding != Memory {
		t.Errorf("insert %+v", i)
	}
	if tube, _ := c.Tube("T 9.5"); tube.ShelfLabel != "T 9.5" || tube.WallStanding != Published {
		t.Errorf("tube %+v", tube)
	}
	if _, err := Read(strings.NewReader("# nothing yet\n"), "shop.toml"); err != nil {
		t.Errorf("an empty file: %v", err)
	}
}

// numbered is how each line of an error begins; TestErrorsNameTheLine holds the numbers.
var numbered = regexp.MustCompile(`(?m)^shop\.toml:[0-9]+: `)

func TestErrorsNameTheLine(t *testing.T) {
	for _, tt := range []struct {
		name, text string
		line       int
	}{
		{"a key of the first entry", with(goodWire, "over_mm", "over_mm = -1.1"), 4},
		{"a key of the second", goodTube + goodTube, 15},
		{"a key that is missing: its table", goodTube + with(goodWire, "source", ""), 14},
		{"an unknown table", goodTube + "[[cable]]\n", 14},
		{"a group in brackets", with(goodInsert, "contacts", `contacts = [{ size = "20", count = 3, n = 1 }]`), 4},
		{"no TOML", "\n[[wire]]\nspec = X\n", 3},
		{"brackets in brackets", "\n\na = " + strings.Repeat("[", 200_000), 3},
	} {
		_, err := Read(strings.NewReader(tt.text), "shop.toml")
		if err == nil || !strings.HasPrefix(err.Error(), fmt.Sprintf("shop.toml:%d: ", tt.line)) {
			t.Errorf("%s: %v does not name line %d", tt.name, err, tt.line)
		}
	}
}

func TestBrokenFiles(t *testing.T) {
	const wire = `shop.toml: wire "X" "22": `
	const tube = `shop.toml: tube "T 9.5": `
	const oneLine = "one line of text, without control characters, marks of writing direction and signs that take no room"
	const over = "; allowed: a number from 0.05 to 100"
	for _, tt := range []struct{ name, text, want string }{
		{"no source", with(goodWire, "source", ""), wire + "source: it is missing; allowed: a text that is not empty"},
		{"empty source", with(goodWire, "source", `source = " "`), wire + "source: it is empty; allowed: a text that is not empty"},
		{"no standing", with(goodTube, "standing", ""), tube + "standing: it is missing; allowed: house, published, practice, memory"},
		{"unknown standing", with(goodTube, "standing", `standing = "sure"`),
			tube + `standing: "sure" is not a standing; allowed: house, published, practice, memory`},
		{"NaN", with(goodWire, "over_mm", "over_mm = nan"), wire + "over_mm: nan is out of range" + over},
		{"Inf", with(goodWire, "over_mm", "over_mm = inf"), wire + "over_mm: inf is out of range" + over},
		{"minus Inf", with(goodWire, "over_mm", "over_mm = -inf"), wire + "over_mm: -inf is out of range" + over},
		{"negative", with(goodWire, "over_mm", "over_mm = -1.1"), wire + "over_mm: -1.1 is out of range" + over},
		{"zero", with(goodWire, "over_mm", "over_mm = 0"), wire + "over_mm: 0 is out of range" + over},
		{"negative, optional", with(goodWire, "gram_per_m", "gram_per_m = -2"),
			wire + "gram_per_m: -2 is out of range; allowed: a number from 0.001 to 50000"},
		{"a text for a number", with(goodWire, "over_mm", `over_mm = "1.1"`), wire + `over_mm: "1.1" is not a number` + over},
		{"a date for a number", with(goodWire, "over_mm", `over_mm = 2020-01-01`), wire + `over_mm: a date or time is not a number` + over},
		{"half a strand", with(goodWire, "strands", "strands = 1.5"),
			wire + "strands: 1.5 is not a whole number in that range; allowed: a whole number from 1 to 100000"},
		{"size", with(goodWire, "size", `size = "thick"`),
			`shop.toml: wire "X" "thick": size: "thick" is not a size; allowed: AWG "22", "1/0"; metric "0.35mm2"`},
		{"copper too large", with(goodWire, "area_mm2", "area_mm2 = 1"),
			wire + "area_mm2: 1 does not fit into over_mm; allowed: the copper of the strands"},
		{"unknown key", with(goodContact, "colour", `colour = "red"`),
			`shop.toml: contact "20": colour: unknown key; allowed: size, max_a, largest_awg, smallest_awg, seal_min_mm, ` +
				`seal_max_mm, well_mm, well_bore_mm, pin, socket, socket_ii, seal_plug, source, standing, awg_standing, ` +
				`smallest_standing, seal_standing`},
		{
			"a key in another case", strings.Replace(goodWire, "over_mm ", "Over_mm", 1),
			wire + "over_mm: it is missing" + over + "\n" + wire +
				"Over_mm: unknown key; allowed: spec, size, over_mm, tol_mm, conductor_mm, strands, area_mm2, ohm_per_km, gram_per_m, " +
				"rated_c, rated_v, insulation, plating, insulation_density, source, standing, over_standing, ohm_standing, rated_standing",
		},
		{"a table in another case", strings.Replace(goodWire, "wire", "Wire", 1),
			"shop.toml: Wire: unknown table; allowed: wire, tube, boot, transition, contact, insert, face, splice, device, source, " +
				"person, instrument, stock, correction"},
		{"one table", strings.Replace(goodWire, "[[wire]]", "[wire]", 1), "shop.toml: wire: it is not a list of tables; allowed: [[wire]]"},
		{"no id", with(goodTube, "id", ""), "shop.toml: tube number 1: id: it is missing; allowed: a text that is not empty"},
		{"a blank at the end", with(goodTube, "id", `id = "T "`),
			`shop.toml: tube "T ": id: "T " starts or ends with a space; allowed: "T"`},
		{"two lines", with(goodTube, "fluids", `fluids = "a\nb"`),
			tube + `fluids: holds a line break (U+000A): "a␊b"; allowed: ` + oneLine},
		{"a command to the terminal", with(goodTube, "fluids", `fluids = "a\u001B[2Jb"`),
			tube + `fluids: holds a control character (U+001B): "a␛[2Jb"; allowed: ` + oneLine},
		{"the same in eight bits, in an id", with(goodTube, "id", `id = "T\u009B2J"`),
			`shop.toml: tube "T\u009b2J": id: holds a control character (U+009B): "T␛[2J"; allowed: ` + oneLine},
		{"a mark of direction", with(goodWire, "source", "source = \"a\u202Eb\""),
			wire + `source: holds a mark of writing direction (U+202E): "a<U+202E>b"; allowed: ` + oneLine},
		{"a joiner in an id", with(goodTube, "id", "id = \"T\u200D1\""),
			"shop.toml: tube \"T\\u200d1\": id: holds a joiner (U+200D): \"T\u200D1\"; allowed: an id without joiners, because two ids " +
				"could look the same"},
		{"a cavity", with(goodInsert, "cavities", `cavities = ["A", "B", "C\u200B"]`),
			`shop.toml: insert "18-32": cavities: holds a sign that takes no room (U+200B): "C<U+200B>"; allowed: ` + oneLine},
		{"a key", goodWire + "\"\\u001B[2J\" = 1\n", wire + "␛[2J: unknown key; allowed: spec, size, over_mm, tol_mm, conductor_mm, " +
			"strands, area_mm2, ohm_per_km, gram_per_m, rated_c, rated_v, insulation, plating, insulation_density, source, standing, " +
			"over_standing, ohm_standing, rated_standing"},
		{"a correction", "[[correction]]\nof = \"over, 3 layers\"\non = \"\\u0007\"\n",
			`shop.toml: correction number 1: on: holds a control character (U+0007): "␇"; allowed: ` + oneLine},
		{"does not shrink", with(goodTube, "recovered_mm", "recovered_mm = 9.5"),
			tube + "recovered_mm: 9.5 is not less than supplied_mm; allowed: a bore below 9.5"},
		{"no length left", with(goodTube, "length_change", "length_change = 1"),
			tube + "length_change: 1 is out of range; allowed: a number from 0 to 0.9"},
		{"per cent for share", with(goodTube, "length_change", "length_change = 10"),
			tube + "length_change: 10 is out of range; allowed: a number from 0 to 0.9"},
		{"flexible as text", with(goodTube, "flexible", `flexible = "yes"`),
			tube + `flexible: "yes" is neither true nor false; allowed: true, false`},
		{"wall limits", with(goodTube, "wall_min_mm", "wall_min_mm = 1"),
			tube + "wall_min_mm: it is above the nominal wall; allowed: at most wall_mm"},
		{"a wire twice", goodWire + goodWire, wire + `size: "X 22" is in the file already; allowed: each wire once`},
		{"a wire twice, spelt otherwise", with(goodWire, "size", `size = "0"`) + with(goodWire, "size", `size = "1/0"`),
			`shop.toml: wire "X" "1/0": size: "X 1/0" is in the file already; allowed: each wire once`},
		{"a tube twice", goodTube + goodTube, tube + `id: "T 9.5" is in the file already; allowed: each tube once`},
		{"an alias that is an id", goodInsert + with(with(goodInsert, "id", `id = "A"`), "aliases", `aliases = ["18-32"]`),
			`shop.toml: insert "A": aliases: "18-32" is in the file already; allowed: each insert once`},
		{"names and contacts differ", with(goodInsert, "cavities", `cavities = ["A", "B"]`),
			`shop.toml: insert "18-32": cavities: there are 2 names; allowed: 3, one for each contact`},
		{"a cavity twice", with(goodInsert, "cavities", `cavities = ["A", "B", "A"]`),
			`shop.toml: insert "18-32": cavities: "A" is in the list twice; allowed: a list of different texts, ["A", "B"]`},
		{"unknown key in contacts", with(goodInsert, "contacts", `contacts = [{ size = "20", count = 3, n = 1 }]`),
			`shop.toml: insert "18-32": contacts 1: n: unknown key; allowed: size, cavities, count`},
		{"gauges the wrong way", with(goodContact, "smallest_awg", `smallest_awg = "18"`),
			`shop.toml: contact "20": smallest_awg: "18" is thicker than largest_awg; allowed: "20" or thinner`},
		{"half a seal range", with(goodContact, "seal_min_mm", `seal_min_mm = 1.0`),
			`shop.toml: contact "20": seal_min_mm: it makes no range with seal_max_mm; allowed: both, the smaller first, or neither`},
		{"outlets", "[[transition]]\nid = \"Y\"\noutlets = [[20, 10, 30], [5, 6, 25]]\nsource = \"a drawing\"\nstanding = \"memory\"",
			`shop.toml: transition "Y": outlets 2: 6 is not less than the expanded bore; allowed: a bore below 5`},
		{"boot shape", "[[boot]]\nid = \"B\"\nshape = \"bent\"\nshell = 8\nlip_supplied_mm = 18\nlip_recovered_mm = " +
			"10\ncable_supplied_mm = 18\ncable_recovered_mm = 6\nlength_mm = 39\nsource = \"a drawing\"\nstanding = \"memory\"",
			`shop.toml: boot "B": shape: "bent" is not one of these words; allowed: straight, 45, 90`},
		{"splice range", "[[splice]]\nid = \"S\"\nbuild = \"butt\"\nover_mm = 3\nlength_mm = 28\ncma_min = 900\ncma_max = 800\nsource = " +
			"\"a drawing\"\nstanding = \"memory\"", `shop.toml: splice "S": cma_min: 900 is more than cma_max; allowed: at most 800`},
		{"syntax", "\n[[wire]]\nspec = X\n", `shop.toml: this is not TOML: expected value but found "X" instead`},
		{"key twice", "[[wire]]\nspec = \"X\"\nspec = \"Y\"\n",
			`shop.toml: this is not TOML: Key 'wire.spec' has already been defined.`},
	} {
		t.Run(tt.name, func(t *testing.T) {
			c, err := Read(strings.NewReader(tt.text), "shop.toml")
			if err == nil {
				t.Fatalf("was read; want %s", tt.want)
			}
			if got := numbered.ReplaceAllString(err.Error(), "shop.toml: "); got != tt.want {
				t.Errorf("\n got %s\nwant %s", got, tt.want)
			}
			if c != nil {
				t.Error("a catalogue came with the error")
			}
		})
	}
}

func TestErrorsCanBeTakenApart(t *testing.T) {
	_, err := Read(strings.NewReader(with(goodWire, "over_mm", "over_mm = -1")), "shop.toml")
	var e EntryError
	if !errors.As(err, &e) || e.File != "shop.toml" || e.Key != "over_mm" {
		t.Errorf("%#v", e)
	}
	broken := errors.New("the cable fell out")
	if _, err := Read(iotest.ErrReader(broken), "shop.toml"); !errors.Is(err, broken) {
		t.Errorf("a reader's error is not wrapped: %v", err)
	}
	if _, err := Read(io.LimitReader(endless{}, MostBytes+10), "shop.toml"); err == nil || !strings.Contains(err.Error(), "larger than") {
		t.Errorf("an endless file: %v", err)
	}
}

type endless struct{}

func (endless) Read(p []byte) (int, error) {
	for i := range p {
		p[i] = '\n'
	}
	return len(p), nil
}
