package wirelist_test

import (
	"bytes"
	"encoding/binary"
	"fmt"
	"slices"
	"strings"
	"testing"
	"unicode/utf16"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"contralay/model"
	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/table"
)

// words are the headings that say one thing in lists of several languages.
func wordsOf() map[string][]string {
	return map[string][]string{
		"id": {"Wire", "Wire No.", "ID", "WireNumber"}, "from": {"From", "Source", "Starts at", "From connector"},
		"from pin": {"From pin", "Source Pin"}, "to": {"To", "Destination", "Ends at", "To connector"}, "to pin": {"To pin", "Dest Pin"},
		"pin": {"Pin", "Cavity", "Pin #", "Way"}, "signal": {"Signal", "Function", "Net name", "Description"},
		"size": {"AWG", "Gauge", "Wire gauge", "Wire size (AWG)"}, "colour": {"Colour", "Color", "Wire colour", "WireColor",
			"Maker's wire colour"},
		"note": {"Notes", "Remarks", "Comment"}, "device 1": {"ECU", "ECU pin"}, "device 2": {"Dash", "Dash pin"},
		"device 3": {"X9", "X9 pin"},
	}
}

// told is one list: its columns by what they say, its rows.
type someList struct {
	cols []string
	rows [][]string
}

// drawList draws a list: pin table, both ends or a column for each device, with what columns it has.
func drawList(t *rapid.T) someList {
	kind := rapid.SampledFrom([]string{"pin table", "both ends", "devices"}).Draw(t, "kind")
	pinTable := kind == "pin table"
	l := someList{cols: []string{"id", "from", "from pin", "to", "to pin"}}
	switch kind {
	case "pin table":
		l.cols = []string{"pin", "signal"}
	case "devices":
		l.cols = []string{"signal", "device 1", "device 2", "device 3"}
	}
	for _, c := range []string{"signal", "size", "colour", "note"} {
		if !slices.Contains(l.cols, c) && rapid.Bool().Draw(t, c) {
			l.cols = append(l.cols, c)
		}
	}
	if pinTable && len(l.cols) == 2 {
		l.cols = append(l.cols, "colour")
	}
	for i := range rapid.IntRange(3, 9).Draw(t, "rows") {
		without := rapid.SampledFrom([]string{"", "device 1", "device 2", "device 3"}).Draw(t, "without")
		row := make([]string, len(l.cols))
		for k, c := range l.cols {
			switch c {
			case "id":
				row[k] = fmt.Sprintf("W%d", 100+i)
			case "from":
				row[k] = rapid.SampledFrom([]string{"P1", "ECU", "Fuse box"}).Draw(t, c)
			case "from pin", "pin":
				row[k] = fmt.Sprint(i + 1)
			case "to":
				row[k] = fmt.Sprintf("Device %c", 'A'+rune(i))
			case "to pin":
				row[k] = rapid.SampledFrom([]string{"1", "2", "B"}).Draw(t, c)
			case "signal":
				row[k] = fmt.Sprintf("%s %c", rapid.SampledFrom([]string{"Lamp", "Fühler", "Gate drive", "Reel"}).Draw(t, c), 'P'+rune(i))
			case "size":
				row[k] = rapid.SampledFrom([]string{"22", "20", "18", "16"}).Draw(t, c)
			case "colour":
				row[k] = rapid.SampledFrom([]string{"red", "white/blue", "GRN", "light blue", "black"}).Draw(t, c)
			case "device 1", "device 2", "device 3":
				if c != without {
					row[k] = fmt.Sprint(int(c[7]-'0') + 3*i)
				}
			case "note":
				row[k] = rapid.SampledFrom([]string{"", "check on site", "tinned"}).Draw(t, c)
			}
		}
		l.rows = append(l.rows, row)
	}
	return l
}

// text writes the list with its headings in some words, its columns in some order, its cells parted by a sign.
func (l someList) text(heads map[string]string, order []int, sep string) string {
	var b strings.Builder
	line := func(cell func(k int) string) {
		for n, k := range order {
			if n > 0 {
				b.WriteString(sep)
			}
			b.WriteString(cell(k))
		}
		b.WriteByte('\n')
	}
	line(func(k int) string { return heads[l.cols[k]] })
	for _, r := range l.rows {
		line(func(k int) string { return r[k] })
	}
	return b.String()
}

// encoded writes a text as editors and spreadsheets save it.
func encoded(text, as string) []byte {
	switch as {
	case "UTF-8 with a mark":
		return append([]byte{0xef, 0xbb, 0xbf}, text...)
	case "UTF-16":
		var b bytes.Buffer
		b.Write([]byte{0xff, 0xfe})
		for _, u := range utf16.Encode([]rune(text)) {
			b.Write(binary.LittleEndian.AppendUint16(nil, u))
		}
		return b.Bytes()
	case "Windows-1252", "line ends of Windows":
		if as == "line ends of Windows" {
			return []byte(strings.ReplaceAll(text, "\n", "\r\n"))
		}
		var b []byte
		for _, r := range text {
			b = append(b, byte(r)) // the letters drawn are those of Latin-1
		}
		return b
	}
	return []byte(text)
}

// facts are what a harness says of each wire, without the numbers that the import gave, in an order of their own.
func factsOf(t *rapid.T, data []byte) []string {
	tables, err := table.Read("list.csv", data, table.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	h, rep, err := wirelist.Import(tables, draft.Options{})
	if err != nil {
		t.Fatalf("%v\n%s", err, data)
	}
	var all []string
	for _, w := range h.Wires {
		id := w.ID
		if rep.Counted[id] {
			id = ""
		}
		pieces := slices.Sorted(strings.SplitSeq(w.Note.V, "; "))
		all = append(all, fmt.Sprintf("%s | %s | %s | %s | %s | %s | %s | %s | %s", id, w.From.V, w.To.V, w.Signal.V, w.Size,
			w.Colour.V, w.Shade.V,
			w.Role.Or(model.Role("")), strings.Join(pieces, "; ")))
	}
	slices.Sort(all)
	return all
}

// A list whose rows, columns, words of headings, separators and letters stand otherwise is the same list.
func TestShuffledListIsTheSame(t *testing.T) {
	all := wordsOf()
	rapid.Check(t, func(t *rapid.T) {
		l := drawList(t)
		plain, other, order := map[string]string{}, map[string]string{}, make([]int, len(l.cols))
		way := rapid.IntRange(0, 1).Draw(t, "way") // the headings of the devices go together
		for k, c := range l.cols {
			plain[c], other[c], order[k] = all[c][0], rapid.SampledFrom(all[c]).Draw(t, c), k
			if strings.HasPrefix(c, "device") {
				other[c] = all[c][way]
			}
		}
		want := factsOf(t, []byte(l.text(plain, order, ",")))
		l.rows = rapid.Permutation(l.rows).Draw(t, "rows")
		at := devicesInOrder(l.cols, rapid.Permutation(order).Draw(t, "columns"))
		sep := rapid.SampledFrom([]string{",", ";", "\t", "|"}).Draw(t, "separator")
		as := rapid.SampledFrom([]string{"", "UTF-8 with a mark", "UTF-16", "Windows-1252", "line ends of Windows"}).Draw(t, "letters")
		text := l.text(other, at, sep)
		if d := cmp.Diff(want, factsOf(t, encoded(text, as))); d != "" {
			t.Fatalf("%s\n-was +is:\n%s", text, d)
		}
	})
}

// devicesInOrder puts the columns of devices in the order of the list: a net of three begins at the first.
func devicesInOrder(cols []string, at []int) []int {
	var places, of []int
	for n, k := range at {
		if strings.HasPrefix(cols[k], "device") {
			places, of = append(places, n), append(of, k)
		}
	}
	slices.Sort(of)
	for n, place := range places {
		at[place] = of[n]
	}
	return at
}

// A value that is taken out of a list is one fact less of one wire, and nothing else changes.
func TestOneCellLess(t *testing.T) {
	all := wordsOf()
	rapid.Check(t, func(t *rapid.T) {
		l := drawList(t)
		heads, order := map[string]string{}, make([]int, len(l.cols))
		for k, c := range l.cols {
			heads[c], order[k] = rapid.SampledFrom(all[c]).Draw(t, c), k
			if strings.HasPrefix(c, "device") {
				heads[c] = all[c][0]
			}
		}
		was := factsOf(t, []byte(l.text(heads, order, ",")))
		row := rapid.IntRange(0, len(l.rows)-1).Draw(t, "row")
		var values []int
		for k, c := range l.cols {
			others := 0 // cells that keep the row a wire
			for i, o := range l.cols {
				if i != k && l.rows[row][i] != "" && slices.Contains([]string{"signal", "size", "colour", "to", "id", "device 1",
					"device 2"}, o) {
					others++
				}
			}
			if slices.Contains([]string{"signal", "size", "colour", "note"}, c) && l.rows[row][k] != "" && others > 0 {
				values = append(values, k)
			}
		}
		if len(values) == 0 {
			return
		}
		k := rapid.SampledFrom(values).Draw(t, "column")
		l.rows[row] = slices.Clone(l.rows[row])
		l.rows[row][k] = ""
		is := factsOf(t, []byte(l.text(heads, order, ",")))
		gone, come := 0, 0
		for _, f := range was {
			if !slices.Contains(is, f) {
				gone++
			}
		}
		for _, f := range is {
			if !slices.Contains(was, f) {
				come++
			}
		}
		most := 1
		if slices.Contains(l.cols, "device 1") {
			most = 2 // a net at three devices is two wires
		}
		if len(is) != len(was) || gone > most || come > most {
			t.Fatalf("%s of row %d taken out\n-was +is:\n%s", l.cols[k], row+1, cmp.Diff(was, is))
		}
	})
}
