package listtest_test

import (
	"fmt"
	"strings"
	"testing"

	"contralay/model/wirelist/listtest"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// What a screen shows of a list: with headings, without, and with a recipe.
func TestColumns(t *testing.T) {
	show := func(text string, r *name.Recipe) string {
		tables, err := table.Read("l.csv", []byte(text), table.Limits{})
		if err != nil {
			t.Fatal(err)
		}
		var lines []string
		for _, c := range listtest.Columns(tables[0], r) {
			lines = append(lines, fmt.Sprintf("%s %s = %s %v", c.Place, c.Key(), c.Field, c.Samples))
		}
		return strings.Join(lines, "\n")
	}
	for _, c := range []struct {
		text string
		r    *name.Recipe
		want string
	}{
		{"Pin,Signal,Bay\nA,x,1\nB,y,\n", nil,
			"l.csv, row 1, column A Pin = pin [A B]\nl.csv, row 1, column B Signal = signal [x y]\nl.csv, row 1, column C Bay = keep [1]"},
		{"Pin,Signal,Bay\nA,x,1\n", &name.Recipe{Columns: map[string]name.Field{"bay": name.FieldIgnore}},
			"l.csv, row 1, column A Pin = pin [A]\nl.csv, row 1, column B Signal = signal [x]\nl.csv, row 1, column C Bay = ignore [1]"},
		{"A,x\nB,y\nC,z\nD,u\n", nil, "l.csv, column A #1 = pin [A B C]\nl.csv, column B #2 = signal [x y z]"},
		{"1,Horn,red\n2,Lamp,blue\n", &name.Recipe{Columns: map[string]name.Field{"#1": name.FieldPin}},
			"l.csv, column A #1 = pin [1 2]\nl.csv, column B #2 = signal [Horn Lamp]\nl.csv, column C #3 = colour [red blue]"},
		{"A,x\nB,y\n", &name.Recipe{Columns: map[string]name.Field{"#1": name.FieldPin, "#2": name.FieldSignal}},
			"l.csv, column A #1 = pin [A B]\nl.csv, column B #2 = signal [x y]"},
	} {
		if got := show(c.text, c.r); got != c.want {
			t.Errorf("%q:\n%s\nwant\n%s", c.text, got, c.want)
		}
	}
}

// What a person said of a column of sizes headed "Wire" holds, and the screen shows what the
// import takes.
func TestSizesUnderWire(t *testing.T) {
	const list = "## J1\n\n| Pin | Function | Wire | Colour |\n|---|---|---|---|\n| 1 | INJ 1 | 22 | BU |\n| 2 | INJ 2 | 22 | GN |\n| 3 " +
		"| 12V | 20 AWG | RD |\n"
	tables, err := table.Read("pins.md", []byte(list), table.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	field := func(r *name.Recipe) name.Field {
		for _, c := range listtest.Columns(tables[0], r) {
			if c.Head == "Wire" {
				return c.Field
			}
		}
		return ""
	}
	if f := field(nil); f != name.FieldGauge {
		t.Errorf("shown as %s", f)
	}
	if f := field(&name.Recipe{Columns: map[string]name.Field{"Wire": name.FieldWire}}); f != name.FieldWire {
		t.Errorf("said to be the wire, and shown as %s", f)
	}
}
