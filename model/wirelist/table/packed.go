package table

import (
	"archive/zip"
	"bufio"
	"bytes"
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"strconv"
	"strings"
)

// book is a packed workbook being read: a zip of which only named parts are opened,
// in memory, and no more of them than the limits allow.
type book struct {
	name  string
	parts map[string]*zip.File
	l     Limits
	left  int // bytes that may still be unpacked
	count counter
}

// mostParts is how many files a workbook may hold; those of people have some twenty
// (no source).
const mostParts = 4096

// readPacked reads an .xlsx or .ods, whichever its parts say.
func readPacked(name string, data []byte, l Limits) ([]Table, error) {
	b := &book{name: name, parts: map[string]*zip.File{}, l: l, left: l.UnpackedBytes, count: counter{l: l}}
	z, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		return nil, b.refuse("", "is a broken zip: "+err.Error(), "a whole .xlsx or .ods")
	}
	if len(z.File) > mostParts {
		return nil, b.refuse("", fmt.Sprintf("holds %d files", len(z.File)), fmt.Sprintf("up to %d", mostParts))
	}
	for _, f := range z.File {
		if _, twice := b.parts[f.Name]; twice {
			return nil, b.refuse("", fmt.Sprintf("holds %q twice", f.Name), "each part once")
		}
		b.parts[f.Name] = f
	}
	switch {
	case b.parts["content.xml"] != nil:
		return b.ods()
	case b.parts["xl/workbook.xml"] != nil || b.parts["[Content_Types].xml"] != nil && b.parts["_rels/.rels"] != nil:
		return b.xlsx()
	}
	return nil, b.refuse("", "is a zip, and no workbook in it", ".xlsx, .ods; unpack it first if lists are in it")
}

func (b *book) refuse(sheet, says, allowed string) error {
	return &Error{Place{File: b.name, Sheet: sheet}, says, allowed}
}

// errTooMuch says that the workbook unpacks to more than is allowed.
var errTooMuch = errors.New("unpacks to too much")

// limited reads until the workbook's allowance is used up.
type limited struct {
	r io.Reader
	b *book
}

func (l limited) Read(p []byte) (int, error) {
	if l.b.left <= 0 {
		return 0, errTooMuch
	}
	if len(p) > l.b.left {
		p = p[:l.b.left]
	}
	n, err := l.r.Read(p)
	l.b.left -= n
	return n, err
}

// element is one start of an element: its name without name space, its attributes by
// name, those of the relationship name space as "r:id".
type element struct {
	name  string
	attrs []xml.Attr
}

func (e element) attr(name string) string {
	for _, a := range e.attrs {
		if a.Name.Local == name {
			return a.Value
		}
	}
	return ""
}

// yes is an attribute that is on.
func (e element) yes(name string) bool { return e.attr(name) == "1" || e.attr(name) == "true" }

// number is an attribute that counts; or is its value where it is left out.
func (e element) number(name string, or int) int {
	s := e.attr(name)
	if s == "" {
		return or
	}
	n, err := strconv.Atoi(s)
	if err != nil || n < 0 {
		return -1
	}
	return n
}

// visitor is told what an XML part holds, in its order. Its error ends the reading.
type visitor struct {
	start func(element) error
	end   func(name string) error
	text  func([]byte)

	within []string                  // the elements that are open where it begins
	ends   func(open []string) error // says whether it may end where these are; nil where none may be
}

// open opens one part.
func (b *book) open(part string) (io.ReadCloser, error) {
	f := b.parts[part]
	if f == nil {
		return nil, b.refuse("", fmt.Sprintf("has no part %q", part), "a whole workbook")
	}
	if f.Flags&1 != 0 {
		return nil, b.refuse("", "has a password", "save it without")
	}
	r, err := f.Open()
	if err != nil {
		return nil, b.refuse("", fmt.Sprintf("part %q cannot be unpacked: %v", part, err), "a whole workbook")
	}
	return r, nil
}

// walk reads one part.
func (b *book) walk(part string, v visitor) error {
	r, err := b.open(part)
	if err != nil {
		return err
	}
	defer r.Close()
	return b.walkText(part, limited{r, b}, v)
}

// walkText reads the text of one part.
func (b *book) walkText(part string, text io.Reader, v visitor) error {
	d := xml.NewDecoder(bufio.NewReaderSize(text, 1<<16)) // it reads byte by byte
	broken := func(why string) error {
		return b.refuse("", fmt.Sprintf("part %q is broken: %s", part, why), "a whole workbook")
	}
	// RawToken looks no name space up, which spares a fifth of the memory; that each
	// element is closed by its own name is seen to here.
	open := v.within
	for {
		tok, err := d.RawToken()
		if err == io.EOF && v.ends != nil {
			return v.ends(open)
		}
		if err == io.EOF && len(open) > 0 {
			return broken("it ends inside an element")
		}
		if err == io.EOF {
			return nil
		}
		if errors.Is(err, errTooMuch) {
			return b.refuse("", fmt.Sprintf("unpacks to more than %d bytes", b.l.UnpackedBytes), "a smaller workbook")
		}
		if err != nil {
			return broken(err.Error())
		}
		switch t := tok.(type) {
		case xml.StartElement:
			if open = append(open, t.Name.Local); len(open) > b.l.XMLDepth {
				return b.refuse("", fmt.Sprintf("part %q has elements more than %d deep", part, b.l.XMLDepth),
					"what a spreadsheet program writes")
			}
			err = v.start(element{t.Name.Local, t.Attr})
		case xml.EndElement:
			if len(open) == 0 || open[len(open)-1] != t.Name.Local {
				return broken(fmt.Sprintf("</%s> closes no element of its name", Short(t.Name.Local)))
			}
			open = open[:len(open)-1]
			if v.end != nil {
				err = v.end(t.Name.Local)
			}
		case xml.CharData:
			if v.text != nil {
				v.text(t)
			}
		case xml.Directive:
			return b.refuse("", fmt.Sprintf("part %q declares a document type", part), "what a spreadsheet program writes")
		}
		if err != nil {
			return err
		}
	}
}

// look is how a row is shown.
type look struct{ struck, hidden bool }

// row adds a row to a sheet, against the limits.
func (b *book) row(t *Table, line int, cells []string, how look) error {
	for len(cells) > 0 && cells[len(cells)-1] == "" {
		cells = cells[:len(cells)-1]
	}
	if len(cells) == 0 {
		return nil
	}
	at := Place{File: b.name, Sheet: t.Sheet, Row: line}
	if says, allowed := b.count.row(len(cells)); says != "" {
		return &Error{at, says, allowed}
	}
	for i, c := range cells {
		if len(c) > b.l.CellBytes {
			at.Column = ColumnLetter(i)
			return &Error{at, fmt.Sprintf("a cell has %d bytes", len(c)), fmt.Sprintf("up to %d", b.l.CellBytes)}
		}
	}
	t.Rows = append(t.Rows, Row{Line: line, Cells: cells, Struck: how.struck, Hidden: how.hidden})
	return nil
}

// plainNumber prints a stored number as a spreadsheet shows it: 15 figures, so that
// 0.34999999999999998 is 0.35. What is no number stays as it is.
func plainNumber(s string) string {
	if len(s) <= 15 && s != "" && (s[0] != '0' || s == "0") && strings.Trim(s, "0123456789") == "" {
		return s // a whole number
	}
	v, err := strconv.ParseFloat(s, 64)
	if err != nil || !strings.ContainsAny(s, "0123456789") {
		return s
	}
	short := strconv.FormatFloat(v, 'g', 15, 64)
	w, err := strconv.ParseFloat(short, 64)
	if err != nil {
		return s
	}
	return strconv.FormatFloat(w, 'f', -1, 64)
}
