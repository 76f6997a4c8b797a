package printed_test

import (
	"slices"
	"testing"

	"contralay/model/wirelist/printed"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// A table that a script printed is as the sheet was; what was given stays as it is.
func TestPlain(t *testing.T) {
	given := table.Table{Rows: []table.Row{
		{Line: 1, Cells: []string{"", "From", "Pin", "To", "Pin.1", "Net"}},
		{Line: 2, Cells: []string{"0", "Box", "1.0", "Horn", "A", "NULL"}},
		{Line: 3, Cells: []string{"1", "nan", "2.0", "Horn", "B", "GND"}},
		{Line: 4, Cells: []string{"2", "nan", "nan", "nan", "nan", "nan"}},
	}}
	plain, told := printed.Plain(words.Vocabulary(), func(string) bool { return false }, given)
	want := [][]string{{"", "From", "Pin", "To", "Pin", "Net"}, {"", "Box", "1", "Horn", "A", ""}, {"", "", "2", "Horn", "B", "GND"}}
	for i, r := range plain.Rows {
		if i >= len(want) || !slices.Equal(r.Cells, want[i]) {
			t.Errorf("row %d: %q", r.Line, r.Cells)
		}
	}
	if len(told) != 4 || given.Rows[1].Cells[0] != "0" || given.Rows[3].Cells[1] != "nan" {
		t.Errorf("%+v, given %v", told, given.Rows)
	}
}

// What could be a name, a cavity or what somebody wrote by hand stays.
func TestPlainLeaves(t *testing.T) {
	for name, rows := range map[string][][]string{
		"a net called NULL":              {{"Pin", "Net"}, {"1", "NULL"}, {"2", "GND"}},
		"None written by hand":           {{"Pin", "Net", "Shield", "Fuse"}, {"1", "A", "None", "None"}, {"2", "B", "foil", "5A"}},
		"cavities from 0":                {{"", "Net", "Colour"}, {"0", "A", "red"}, {"1", "B", "blue"}, {"2", "C", "white"}},
		"Pin 1 and Pin 2":                {{"From", "Pin 1", "To", "Pin 2"}, {"A", "1", "B", "1"}, {"A", "2", "B", "2"}},
		"a section of 1.0 by hand":       {{"Pin", "Net", "Size"}, {"1", "A", "1.0"}, {"2", "B", "2.0"}},
		"numbers of wires from 0":        {{"Wire", "From", "To"}, {"0", "A:1", "B:1"}, {"1", "A:2", "B:2"}, {"2", "A:3", "B:3"}},
		"a column that stops to count":   {{"", "Pin", "Net"}, {"0", "1", "A"}, {"1", "2", "B"}, {"7", "3", "C"}},
		"a heading that nobody knows, 2": {{"Pin", "Blob", "Blob.1"}, {"1", "x", "y"}, {"2", "z", "q"}},
	} {
		given := table.Table{}
		for i, cells := range rows {
			given.Rows = append(given.Rows, table.Row{Line: i + 1, Cells: cells})
		}
		plain, told := printed.Plain(words.Vocabulary(), func(string) bool { return false }, given)
		for i, r := range plain.Rows {
			if !slices.Equal(r.Cells, rows[i]) {
				t.Errorf("%s: row %d: %q", name, r.Line, r.Cells)
			}
		}
		if len(told) > 0 {
			t.Errorf("%s: %+v", name, told)
		}
	}
}
