package table

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"slices"
	"sync"
)

// Reading the XML of a long sheet is a third of the work of its list, and each row of it stands by itself: its two halves are read side
// by side. Where anything about them is out of the ordinary the sheet is read from its first letter to its last, which says what.

// Sheets between these sizes, in bytes unpacked, are halved: less is read at once, and more would be held beside its rows.
const leastHalved, mostHalved = 1 << 20, 32 << 20

var errNotHalved = errors.New("is not as two halves")

// whole unpacks a sheet that is worth halving; nil for any other.
func (x *xlsxBook) whole(part string) ([]byte, error) {
	f := x.parts[part]
	if f == nil || f.UncompressedSize64 < leastHalved || f.UncompressedSize64 > mostHalved || int(f.UncompressedSize64) > x.left {
		return nil, nil
	}
	r, err := x.open(part)
	if err != nil {
		return nil, err
	}
	defer r.Close()
	text := make([]byte, f.UncompressedSize64)
	_, err = io.ReadFull(r, text)
	if n, end := r.Read(make([]byte, 1)); err != nil || n > 0 || end != io.EOF {
		return nil, nil // it is not what it says: that is told where it is read
	}
	x.left -= len(text)
	return text, nil
}

// halves reads both halves of a sheet. Where it reports false nothing is read.
func (x *xlsxBook) halves(part string, text []byte, t *Table, spans *[]merged) bool {
	at := halfOf(text)
	if at < 0 {
		return false
	}
	within := openAtRows(text)
	one, other := x.half(t), x.half(t)
	first, second := one.rows(&one.table, &one.spans), other.rows(&other.table, &other.spans)
	first.ends = func(open []string) error {
		if !slices.Equal(open, within) {
			return errNotHalved
		}
		return nil
	}
	second.within = slices.Clone(within)
	var side sync.WaitGroup
	var errSecond error
	side.Go(func() { errSecond = other.walkText(part, bytes.NewReader(text[at:]), second) })
	errFirst := one.walkText(part, bytes.NewReader(text[:at]), first)
	side.Wait()
	if errFirst != nil || errSecond != nil || len(one.spans)+len(other.spans) > mostMerged {
		return false
	}
	for _, r := range other.table.Rows {
		if says, _ := one.count.row(len(r.Cells)); says != "" {
			return false
		}
	}
	x.count = one.count
	t.Rows = append(one.table.Rows, other.table.Rows...)
	*spans = append(one.spans, other.spans...)
	return true
}

// sheetHalf reads half of a sheet, with a count and a store of texts of its own.
type sheetHalf struct {
	xlsxBook
	table Table
	spans []merged
}

func (x *xlsxBook) half(t *Table) *sheetHalf {
	own := *x.book
	h := &sheetHalf{xlsxBook: *x, table: *t}
	h.book, h.texts = &own, map[string]string{}
	return h
}

// halfOf is where the first row behind the middle of a sheet begins; −1 where a row need not be one, for comments and the like may hold
// anything, or has no number of its own.
func halfOf(text []byte) int {
	row := []byte("<row ")
	at := bytes.Index(text[len(text)/2:], row)
	if at < 0 || bytes.Contains(text, []byte("<!")) {
		return -1
	}
	at += len(text) / 2
	tag, _, closed := bytes.Cut(text[at:], []byte(">"))
	if !closed || !bytes.Contains(tag, []byte(` r="`)) {
		return -1
	}
	return at
}

// openAtRows are the elements that the first row of a sheet stands in.
func openAtRows(text []byte) (open []string) {
	d := xml.NewDecoder(bytes.NewReader(text))
	for {
		tok, err := d.RawToken()
		if err != nil {
			return open
		}
		switch t := tok.(type) {
		case xml.StartElement:
			if t.Name.Local == "row" {
				return open
			}
			open = append(open, t.Name.Local)
		case xml.EndElement:
			if len(open) > 0 {
				open = open[:len(open)-1]
			}
		}
	}
}
