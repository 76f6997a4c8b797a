package wirelist_test

import (
	"fmt"
	"maps"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"contralay/model/file"
	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// pools are cells as lists have them, right and wrong, by heading.
func pools() map[string][]string {
	return map[string][]string{
		"Wire":     {"", "1", "2", "101", "W7"},
		"From":     {"P1", "P1:A", "P2", "Bulkhead, left", "S1", "", "?", "n/c", "Ground stud", "P1-4"},
		"To":       {"INJ1:1", "INJ2:2", "S1", "S2", "", "tbd", "spare", "P1:A", "P1:1,2", "Fan relay"},
		"Pin":      {"A", "B", "A,B", "1", "2", "1-4", "", "I", "?"},
		"Left pin": {"", "A", "B", "?"}, "Right pin": {"", "1", "2", "1,2"},
		"Gauge":  {"", "22", "0.35mm²", "2x24 shielded", "M22759/32-22-9", "red", "0", "-", "thick"},
		"Colour": {"", "red", "R/W", "92", "Light Blue", "Bare", "???", "reserved", "2 core brown", "22 AWG", "clear"},
		"Length": {"", "610mm", "24 in", "720", "?", "1,250", "red"},
		"Amps":   {"", "1", "20 mA", "lots", "7.5A"},
		"Signal": {"", "INJ 1", "INJ 2", "CAN H", "CAN L", "spare", "N/C", "Reserved", "Sensor ground"},
		"Notes": {"", "fused 7.5 A", "twisted", "2x24 shielded", "pair with 101", "pair with 999", "ask the driver", "feeds four, fuse 5 A",
			"reserved", "F3"},
		"Fuse":  {"", "5", "F3", "F3 10A", "big one"},
		"Cable": {"", "CB1", "TSP", "2 core", "-"},
		"Odd":   {"", "x", "loose text"},
	}
}

// Of any rows of such cells comes a harness that is sound, the same each time; and each
// text that is no value of a kind that is understood stands in the harness or in the
// report.
func TestAnyListIsSoundAndLosesNothing(t *testing.T) {
	all := pools()
	rapid.Check(t, func(t *rapid.T) {
		heads := rapid.SampledFrom([][]string{
			{"Wire", "From", "Pin", "To", "Pin", "Gauge", "Colour", "Length", "Amps", "Signal", "Notes"},
			{"From", "To", "Gauge", "Colour", "Odd", "Fuse", "Cable"},
			{"Pin", "Signal", "Gauge", "Colour", "Notes", "Fuse"},
			{"Pin", "Signal", "To", "Length", "Cable", "Odd"},
			{"Wire", "Left pin", "Right pin", "Colour", "Notes"},
		}).Draw(t, "heads")
		rows := [][]string{heads}
		for range rapid.IntRange(1, 12).Draw(t, "rows") {
			row := make([]string, len(heads))
			for i, h := range heads {
				row[i] = rapid.SampledFrom(all[h]).Draw(t, h)
			}
			rows = append(rows, row)
		}
		list := table.Table{File: "list", Comma: true}
		for i, r := range rows {
			list.Rows = append(list.Rows, table.Row{Line: i + 1, Cells: r})
		}
		h, report, err := wirelist.Import([]table.Table{list}, draft.Options{})
		if err != nil && strings.Contains(err.Error(), "no row below") {
			return // a remark is all there is
		}
		if err != nil {
			t.Fatal(err)
		}
		sound(t, h)
		text := string(file.Encode(file.Document{Harness: h}))
		again, second, _ := wirelist.Import([]table.Table{list}, draft.Options{})
		if text != string(file.Encode(file.Document{Harness: again})) || cmp.Diff(report, second) != "" {
			t.Fatal("twice the same list, and not the same harness and report")
		}
		said := text + strings.Join(report.Full(), "\n")
		for n, r := range rows[1:] {
			if strings.Join(r, "") == "" || leftOut(report.Full(), n+2) {
				continue
			}
			for i, cell := range r {
				if !strings.Contains(said, cell) && !understood(heads[i], cell) {
					t.Fatalf("%q of %q is lost\n%s\n%s", cell, r, text, strings.Join(report.Full(), "\n"))
				}
			}
		}
		if len(report.Lines()) > len(report.Full()) {
			t.Fatal("the short report is longer than the full one")
		}
	})
}

// leftOut reports whether a report says with its place that a row is left out, as a row of a table without wires.
func leftOut(said []string, row int) bool {
	at := regexp.MustCompile(fmt.Sprintf(`\brow %d\b.*; left out$`, row))
	return slices.ContainsFunc(said, at.MatchString)
}

// understood: the cell is a value that the file has under another spelling.
func understood(head, cell string) bool {
	switch head {
	case "Gauge":
		_, ok := value.ParseGauge(cell, value.BareAWG, value.MarkUnknown)
		return ok || cell == "-"
	case "Colour":
		_, ok := value.ParseColour(cell, "")
		return ok || cell == "reserved"
	case "Length":
		_, ok := value.ParseLength(cell, "", value.MarkPoint)
		return ok
	case "Amps", "Fuse":
		_, ok := value.ParseCurrent(cell, false, value.MarkUnknown)
		return ok || cell == "F3 10A"
	case "Notes":
		return cell == "fused 7.5 A" || cell == "twisted" || cell == "2x24 shielded" || cell == "reserved" || cell == "pair with 101"
	case "Cable":
		return cell == "TSP" || cell == "2 core" || cell == "-"
	case "From", "To", "Pin", "Right pin":
		// A name and a cavity in one cell are parted, a blank becomes a dash.
		return cell == "n/c" || cell == "spare" || strings.ContainsAny(cell, ":,-")
	case "Signal":
		return cell == "N/C" || cell == "Reserved"
	}
	return false
}

// Whatever headings a shop puts beside those that a wire hangs on, in whatever order and
// however often: no cell below them is dropped without a word.
func TestNoColumnIsDropped(t *testing.T) {
	known := slices.Sorted(maps.Keys(words.Vocabulary()))
	rapid.Check(t, func(t *rapid.T) {
		heads := slices.Clone(rapid.SampledFrom([][]string{
			{"Wire", "From", "Pin", "To", "Pin"},
			{"From", "To", "Colour"},
			{"Pin", "Signal", "Gauge"},
			{"Connector", "Pin", "Signal", "Wire"},
			{"Pin", "Signal", "To"},
			{"Left pin", "Right pin", "Wire"},
		}).Draw(t, "base"))
		for range rapid.IntRange(0, 3).Draw(t, "more") {
			at := rapid.IntRange(0, len(heads)).Draw(t, "at")
			heads = slices.Insert(heads, at, rapid.SampledFrom(known).Draw(t, "head"))
		}
		list := table.Table{File: "list", Rows: []table.Row{{Line: 1, Cells: heads}}}
		n := 0
		for i := range rapid.IntRange(1, 3).Draw(t, "rows") {
			row := make([]string, len(heads))
			for k := range row {
				if rapid.IntRange(0, 4).Draw(t, "filled") > 0 {
					n++
					row[k] = "xo" + string(rune('a'+n/20)) + string(rune('a'+n%20)) + "ux" // no word of any language
				}
			}
			list.Rows = append(list.Rows, table.Row{Line: 2 + i, Cells: row})
		}
		h, report, err := wirelist.Import([]table.Table{list}, draft.Options{})
		if err != nil {
			return // no row names its columns: said
		}
		said := string(file.Encode(file.Document{Harness: h})) + strings.Join(report.Full(), "\n")
		for _, r := range list.Rows[1:] {
			for k, cell := range r.Cells {
				if !strings.Contains(said, cell) {
					t.Fatalf("%q below %q is lost\n%q\n%q\n%s", cell, heads[k], heads, r.Cells, said)
				}
			}
		}
	})
}
