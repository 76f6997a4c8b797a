package name_test

import (
	"errors"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
	"pgregory.net/rapid"

	"contralay/model/visible"
	"contralay/model/wirelist/listtest"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

func FuzzRecipe(f *testing.F) {
	listtest.Seed(f, ".recipe.toml")
	f.Fuzz(func(t *testing.T, data []byte) {
		r, err := name.DecodeRecipe("recipe", data)
		if err != nil {
			if c, found := visible.Find(err.Error()); found {
				t.Fatalf("%q holds %U", err, c)
			}
			return
		}
		text := r.Encode()
		again, err := name.DecodeRecipe("recipe", text)
		if err != nil || string(again.Encode()) != string(text) {
			t.Fatalf("%v\n%s\n%s", err, text, again.Encode())
		}
	})
}

func TestRecipeRefused(t *testing.T) {
	for text, want := range map[string]string{
		"columns = 3":            "r: columns: is no table; allowed: headings and their meanings, \"Ader\" = \"wire\"",
		"length_unit = \"yard\"": "r: length_unit: yard is not one of the words; allowed: mm, cm, m, in, ft",
		"[columns]\nA = \"weight\"": "r: columns.\"A\": weight is no meaning; allowed: wire, from, from pin, to, to pin, from and to, " +
			"connector, pin, signal, gauge, spec, colour, stripe, length, current, unit, fuse, note, cable, " +
			"contact size, through, pin of the device, keep, ignore",
		"[colours]\nmauve = \"nice\"": "r: colours.\"mauve\": nice is no colour; allowed: a colour in English, \"dark red\"",
		"[columns]\n\"#0\" = \"pin\"": "r: columns.\"#0\": is no column; allowed: #1 to #256, or a heading",
		"header = 3": "r: header: unknown key; allowed: colours, columns, connector, decimal, header_row, hidden_sheets_read, " +
			"language, length_unit, sheets_left_out, spec, spec_metric, table",
		"table = 3":               "r: table: is no list of tables; allowed: [[table]], up to 1000 times",
		"sheets_left_out = \"A\"": "r: sheets_left_out: A is no list; allowed: texts in brackets, [\"Spare\", \"Notes\"]",
		"[[table]]\ntitle = \"P\\u001B1\"": "r: table 1, title: holds a control character (U+001B): \"P␛1\"; allowed: one line of text, " +
			"without control characters, marks of writing direction and signs that take no room",
		"[[table]]\nleft_out = 1": "r: table 1, left_out: 1 is neither; allowed: true, false",
		"[[table]]\nnumber = 0":   "r: table 1, number: 0 is no number of a table; allowed: a whole number from 1 to 1000000",
		"[[table]]\n[[table]]\nx = 1": "r: table 2, x: unknown key; allowed: columns, connector, goes_on, heading_row, headings, " +
			"left_out, " +
			"no_headings, number, read_as, rows_left_out, sheet, title",
		"connector = \"P1\\u001B[2J\"": "r: connector: holds a control character (U+001B): \"P1␛[2J\"; allowed: one line of text, " +
			"without control characters, marks of writing direction and signs that take no room",
		"spec = \"a\u200db\"": "r: spec: holds a joiner (U+200D): \"a\u200db\"; allowed: an id without joiners, because two ids could " +
			"look the same",
		"length_unit = \"\\u0007\"":        "r: length_unit: ␇ is not one of the words; allowed: mm, cm, m, in, ft",
		"\na = " + strings.Repeat("[", 99): "r, row 2: brackets in brackets, or the parts of a key, are nested too deep; allowed: 32",
		"header_row = -1":                  "r: header_row: -1 is no row; allowed: a whole number from 0 to 1000000",
	} {
		if _, err := name.DecodeRecipe("r", []byte(text)); err == nil || err.Error() != want {
			t.Errorf("%q: %v\nwant %s", text, err, want)
		}
	}
	var bad *table.Error
	if _, err := name.DecodeRecipe("r", []byte("a = = b")); !errors.As(err, &bad) || bad.Row != 1 {
		t.Errorf("%v", err)
	}
}

// A recipe that is written is read as the same.
func TestRecipeRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		word := func(all ...string) string { return rapid.SampledFrom(all).Draw(t, "word") }
		r := name.Recipe{
			HeaderRow: rapid.IntRange(0, 99).Draw(t, "row"), Unit: value.LengthUnit(word("", "mm", "cm", "m", "in", "ft")),
			Mark: value.Mark(rapid.IntRange(0, 2).Draw(t, "mark")), Language: word("", "en", "de", "fr", "es", "it"),
			Spec: word("", "AS22759/32"), Metric: word("", "ISO 6722 thin"), Connector: word("", "P1", `a "b" \ c`),
		}
		if rapid.Bool().Draw(t, "columns") {
			r.Columns = rapid.MapOf(rapid.StringMatching(`[^#\x00]{0,12}|#[1-9]`), rapid.SampledFrom(name.Fields())).Draw(t, "columns")
		}
		if rapid.Bool().Draw(t, "sheets") {
			r.Sheets = []string{word("Notes", `a "b"`)}
		}
		if rapid.Bool().Draw(t, "hidden") {
			r.Hidden = []string{word("Old", `a "b"`)}
		}
		for range rapid.IntRange(0, 2).Draw(t, "tables") {
			r.Tables = append(r.Tables, name.TableSaid{
				Key: name.TableKey{Sheet: word("", "Pins"), Title: word("", "P1"), Heads: word("", "Pin | Signal"),
					Nth: rapid.IntRange(1, 3).Draw(t, "nth")},
				Reading: word("", "both ends in a row"), Connector: word("", "P9"), Heading: word("", "Nr Ader"),
				NoHeading: rapid.Bool().Draw(t, "none"), LeftOut: rapid.Bool().Draw(t, "out"),
				GoesOn: rapid.Bool().Draw(t, "on"),
				Rows:   rapid.SliceOfN(rapid.SampledFrom([]string{"Spare", `a "b" \ c`}), 0, 2).Draw(t, "rows"),
				Columns: rapid.MapOfN(rapid.StringMatching(`[^#\x00]{0,12}|#[1-9]`), rapid.SampledFrom(name.Fields()), 0, 3).Draw(t,
					"said"),
			})
		}
		again, err := name.DecodeRecipe("r", r.Encode())
		if d := cmp.Diff([][]string{r.Sheets, r.Hidden}, [][]string{again.Sheets, again.Hidden}, cmpopts.EquateEmpty()); d != "" {
			t.Fatal(d)
		}
		if d := cmp.Diff(r.Tables, again.Tables, cmpopts.EquateEmpty()); d != "" {
			t.Fatal(d)
		}
		if err != nil || string(again.Encode()) != string(r.Encode()) || len(again.Columns) != len(r.Columns) {
			t.Fatalf("%v\n%s\n%s", err, r.Encode(), again.Encode())
		}
	})
}
