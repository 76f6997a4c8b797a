package table

import (
	"bytes"
	"fmt"
	"strings"

	"contralay/model/visible"
	"contralay/model/wirelist/columned"
	"contralay/model/wirelist/comment"
	"contralay/model/wirelist/inbars"
	"contralay/model/wirelist/quotation"
	"contralay/model/wirelist/quotedcells"
	"contralay/model/wirelist/strokes"
)

// Read makes tables of one file; what is odd in its cells is left out of them, and said. What it is shows in its content; the name serves
// for messages and, where a text could be either, for Markdown.
//
// The error is an *Error: a file past a limit, a binary one, a workbook that is
// broken or locked. Then there are no tables.
func Read(name string, data []byte, limits Limits) ([]Table, error) {
	all, err := read(visible.Line(name), data, limits.filled())
	return settled(all), err
}

func read(name string, data []byte, l Limits) ([]Table, error) {
	refuse := func(says, allowed string) ([]Table, error) {
		return nil, &Error{Place{File: name}, says, allowed}
	}
	const kinds = "separated values, columns of text, Markdown, a page or a wiki with tables, .xlsx, .ods"
	switch {
	case len(data) > l.FileBytes:
		return refuse(fmt.Sprintf("is %d bytes", len(data)), fmt.Sprintf("up to %d", l.FileBytes))
	case len(bytes.TrimSpace(data)) == 0:
		return nil, &EmptyError{&Error{Place{File: name}, "is empty", kinds}}
	case bytes.HasPrefix(data, []byte("PK")):
		return readPacked(name, data, l)
	case bytes.HasPrefix(data, []byte{0xd0, 0xcf, 0x11, 0xe0}):
		return refuse("is a workbook of the old binary kind, or one with a password", "save it as .xlsx or .ods without password")
	case bytes.HasPrefix(data, []byte("%PDF")):
		return refuse("is a page to print, not a list", kinds)
	}
	text, guess, problem := decodeText(data)
	if problem != "" {
		return refuse(problem, kinds)
	}
	all, err := readText(name, text, l)
	for i := range all {
		all[i].Guess = guess
	}
	return all, err
}

// readText reads a text of any kind.
func readText(name, text string, l Limits) ([]Table, error) {
	lower := strings.ToLower(name)
	if strings.HasSuffix(lower, ".md") || strings.HasSuffix(lower, ".markdown") || hasMarkup(name, text) || hasFences(text) {
		return readMarkdown(name, text, l)
	}
	if !strings.HasSuffix(lower, ".csv") && !strings.HasSuffix(lower, ".tsv") {
		return readLetter(name, text, l, mostDeep)
	}
	return readPlain(name, lower, text, l)
}

// mostDeep is how often a letter may quote another that is read: more signs before a line are no letter (no source).
const mostDeep = 5

// readLetter reads a text, and what it quotes as a letter of its own.
func readLetter(name, text string, l Limits, deep int) ([]Table, error) {
	answer, letter, quotes := quotation.Part(text)
	plain, faces := columned.WithoutFaces(answer)
	all, err := readPlain(name, strings.ToLower(name), plain, l)
	if err == nil && len(all) > 0 {
		if all[0].Faces = faces; quotes && deep > 0 {
			all[0].Letter, err = readLetter(name, letter, l, deep-1)
		}
	}
	return all, err
}

// readPlain reads a text that is no page and no wiki.
func readPlain(name, lower, text string, l Limits) ([]Table, error) {
	if !strings.HasSuffix(lower, ".csv") && !strings.HasSuffix(lower, ".tsv") {
		if barred, ok := inbars.Text(text); ok {
			return readMarkdown(name, barred, l)
		}
	}
	text = quotedcells.Plain(columned.WithoutBoxes(text))
	if comments, lines, ok := comment.Source(text); ok {
		all, err := readMarkdown(name, comments, l)
		for i := range all {
			all[i].Program = lines
		}
		return all, err
	}
	if columned.EvenTabs(text) {
		return readSeparated(name, text, l)
	}
	if !strings.HasSuffix(lower, ".csv") && !strings.HasSuffix(lower, ".tsv") {
		if parted, heads, ok := columned.Told(text); ok {
			return readHeaded(name, parted, heads, l)
		}
	}
	if !strings.HasSuffix(lower, ".csv") && !strings.HasSuffix(lower, ".tsv") && strokes.Has(text) ||
		hasRuler(text) || isPoints(text) || columned.StartsArrowed(text) || columned.Led(text) {
		return readMarkdown(name, text, l)
	}
	if inColumns(text) && columned.IsLeads(text) {
		return readMarkdown(name, text, l)
	}
	if inColumns(text) {
		return readColumns(name, text, l)
	}
	if strings.HasSuffix(lower, ".txt") && (isRuns(text) || isLined(text)) {
		return readMarkdown(name, text, l)
	}
	return readSeparated(name, text, l)
}

// counter counts rows and cells against the limits.
type counter struct {
	l           Limits
	rows, cells int
}

// row counts one row of n cells and says what is too much of; "" is none.
func (c *counter) row(n int) (says, allowed string) {
	c.rows++
	c.cells += n
	switch {
	case n > c.l.Columns:
		return fmt.Sprintf("has %d cells", n), fmt.Sprintf("up to %d in a row", c.l.Columns)
	case c.rows > c.l.Rows:
		return "is one row too many", fmt.Sprintf("up to %d rows in a file, so that the harness can be saved; part the list",
			c.l.Rows)
	case c.cells > c.l.Cells:
		return "is where there are too many cells", fmt.Sprintf("up to %d in a file", c.l.Cells)
	}
	return "", ""
}
