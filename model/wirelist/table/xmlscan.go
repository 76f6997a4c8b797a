package table

import (
	"bufio"
	"bytes"
	"encoding/xml"
	"io"
	"regexp"
	"unicode/utf8"
)

// scanner parts an XML part in elements and texts. The plain XML that spreadsheet programs write it parts itself, which takes
// a fifth of the time and hardly any memory. Where it meets anything else (a comment, a section of raw text, an entity by
// number, a letter that no XML has, a part that ends too early) it hands all that is left to the library, which reads it
// or says what is wrong with it: both give the same of what both can read.
type scanner struct {
	from   io.Reader
	buf    []byte
	at     int   // what is not parted yet begins here
	err    error // of from
	plain  []byte
	names  map[string]string
	attrs  []attr
	closes string // the element that is closed where it opened
	more   *xml.Decoder
	lines  int // before what the library reads
}

// attr is one attribute, by its name without name space.
type attr struct{ name, value string }

// token is one thing of an XML part.
type token struct {
	kind  tokenKind
	name  string
	attrs []attr // valid until the next
	text  []byte // valid until the next
}

type tokenKind byte

const (
	opens tokenKind = iota
	closed
	chars
	docType
	other
)

const (
	scanBuffer = 1 << 16
	mostToken  = 1 << 20 // bytes of one element or text that is parted here
	mostNames  = 1 << 10 // names that are kept, so that each is made once
)

// lead is the line that begins a part in the letters that we read.
var lead = regexp.MustCompile(`^<\?xml version=("1\.0"|'1\.0')( encoding=("(UTF-8|utf-8)"|'(UTF-8|utf-8)'))?` +
	`( standalone=("(yes|no)"|'(yes|no)'))? ?\?>`)

func newScanner(r io.Reader) *scanner {
	s := &scanner{from: r, buf: make([]byte, 0, scanBuffer), names: map[string]string{}}
	for len(s.buf) < 128 && s.fill() {
	}
	if n := len(lead.Find(s.buf)); n > 0 {
		s.at = n
	}
	return s
}

// fill reads more of the part; false where there is no more, or a token is too long.
func (s *scanner) fill() bool {
	if s.err != nil || len(s.buf)-s.at > mostToken {
		return false
	}
	if s.at > 0 {
		s.lines += bytes.Count(s.buf[:s.at], []byte{'\n'})
		s.buf = s.buf[:copy(s.buf, s.buf[s.at:])]
		s.at = 0
	}
	if len(s.buf) == cap(s.buf) {
		s.buf = append(make([]byte, 0, 2*cap(s.buf)), s.buf...)
	}
	n, err := s.from.Read(s.buf[len(s.buf):cap(s.buf)])
	s.buf, s.err = s.buf[:len(s.buf)+n], err
	return n > 0 || err == nil
}

// next is the next token; io.EOF behind the last.
func (s *scanner) next() (token, error) {
	if s.closes != "" {
		t := token{kind: closed, name: s.closes}
		s.closes = ""
		return t, nil
	}
	if s.more != nil {
		return s.byLibrary()
	}
	for {
		t, n, whole := s.part(s.buf[s.at:])
		switch {
		case n > 0:
			s.at += n
			return t, nil
		case !whole && s.fill():
			continue
		}
		s.lines += bytes.Count(s.buf[:s.at], []byte{'\n'})
		var rest io.Reader = bytes.NewReader(s.buf[s.at:])
		if s.err == nil {
			rest = io.MultiReader(rest, s.from)
		} else {
			rest = io.MultiReader(rest, failing{s.err})
		}
		s.more = xml.NewDecoder(bufio.NewReaderSize(rest, scanBuffer)) // it reads byte by byte
		return s.byLibrary()
	}
}

// failing is the end of a part that could be read no further.
type failing struct{ err error }

func (f failing) Read([]byte) (int, error) { return 0, f.err }

// byLibrary gives the next token that the library reads.
func (s *scanner) byLibrary() (token, error) {
	// RawToken looks no name space up, which spares a fifth of the memory; that each
	// element is closed by its own name is seen to by who reads the tokens.
	tok, err := s.more.RawToken()
	if err != nil {
		if wrong, ok := err.(*xml.SyntaxError); ok {
			wrong.Line += s.lines
		}
		return token{}, err
	}
	switch t := tok.(type) {
	case xml.StartElement:
		s.attrs = s.attrs[:0]
		for _, a := range t.Attr {
			s.attrs = append(s.attrs, attr{a.Name.Local, a.Value})
		}
		return token{kind: opens, name: t.Name.Local, attrs: s.attrs}, nil
	case xml.EndElement:
		return token{kind: closed, name: t.Name.Local}, nil
	case xml.CharData:
		return token{kind: chars, text: t}, nil
	case xml.Directive:
		return token{kind: docType}, nil
	}
	return token{kind: other}, nil
}

// part parts one token off some bytes and says how long it is: 0 where it is none that is parted here, or more bytes
// are needed, which whole tells apart.
func (s *scanner) part(b []byte) (t token, n int, whole bool) {
	switch {
	case len(b) < 2:
		return t, 0, false
	case b[0] != '<':
		return s.chars(b)
	case b[1] == '/':
		local, n := localName(b[2:])
		if n += 2; n >= len(b) {
			return t, 0, false
		}
		if local == nil || b[n] != '>' {
			return t, 0, true
		}
		return token{kind: closed, name: s.named(local)}, n + 1, true
	}
	return s.element(b)
}

// element parts the start of an element.
func (s *scanner) element(b []byte) (t token, n int, whole bool) {
	local, n := localName(b[1:])
	if n++; n >= len(b) {
		return t, 0, false
	}
	if local == nil {
		return t, 0, true
	}
	name := s.named(local)
	s.attrs = s.attrs[:0]
	for {
		for n < len(b) && (b[n] == ' ' || b[n] == '\n' || b[n] == '\t' || b[n] == '\r') {
			n++
		}
		switch {
		case n+1 >= len(b) && (n >= len(b) || b[n] != '>'):
			return t, 0, false
		case b[n] == '>':
			return token{kind: opens, name: name, attrs: s.attrs}, n + 1, true
		case b[n] == '/':
			if b[n+1] != '>' {
				return t, 0, true
			}
			s.closes = name
			return token{kind: opens, name: name, attrs: s.attrs}, n + 2, true
		}
		key, k := localName(b[n:])
		if n += k; n+1 >= len(b) {
			return t, 0, false
		}
		quote := b[n+1]
		if key == nil || b[n] != '=' || quote != '"' && quote != '\'' {
			return t, 0, true
		}
		from := n + 2
		for n = from; n < len(b) && b[n] != quote; n++ {
			if c := b[n]; c < ' ' || c >= utf8.RuneSelf || c == '<' || c == '&' {
				return t, 0, true
			}
		}
		if n >= len(b) {
			return t, 0, false
		}
		value := b[from:n]
		a := attr{name: s.named(key)}
		if len(key) == 1 && key[0] != 'r' { // the kind and the style of a cell
			a.value = s.named(value)
		} else {
			a.value = string(value)
		}
		s.attrs = append(s.attrs, a)
		n++
	}
}

// chars parts a text.
func (s *scanner) chars(b []byte) (t token, n int, whole bool) {
	plain, letters := true, false // as it is written; beyond ASCII
	for n < len(b) && b[n] != '<' {
		switch c := b[n]; {
		case c == '&' || c == '\r':
			plain = false
		case c < ' ' && c != '\n' && c != '\t':
			return t, 0, true
		case c >= utf8.RuneSelf:
			letters = true
		case c == '>' && n > 1 && b[n-1] == ']' && b[n-2] == ']':
			return t, 0, true
		}
		n++
	}
	if n == len(b) {
		return t, 0, false
	}
	if letters && !allLetters(b[:n]) {
		return t, 0, true
	}
	if plain {
		return token{kind: chars, text: b[:n]}, n, true
	}
	s.plain = s.plain[:0]
	for i := 0; i < n; i++ {
		switch c := b[i]; c {
		case '&':
			sign, k := entity(b[i:n])
			if k == 0 {
				return t, 0, true
			}
			s.plain = append(s.plain, sign)
			i += k - 1
		case '\r': // a line's end, however it is written
			if b[i+1] != '\n' {
				s.plain = append(s.plain, '\n')
			}
		default:
			s.plain = append(s.plain, c)
		}
	}
	return token{kind: chars, text: s.plain}, n, true
}

// entity reads one of the five signs that have a name, and says how long it is; 0 where it is none of them.
func entity(b []byte) (sign byte, n int) {
	for _, e := range []struct {
		name string
		sign byte
	}{{"&amp;", '&'}, {"&lt;", '<'}, {"&gt;", '>'}, {"&quot;", '"'}, {"&apos;", '\''}} {
		if len(b) >= len(e.name) && string(b[:len(e.name)]) == e.name {
			return e.sign, len(e.name)
		}
	}
	return 0, 0
}

// allLetters reports whether every character is one that a text may have (XML 1.0, 2.2).
func allLetters(b []byte) bool {
	for len(b) > 0 {
		r, n := utf8.DecodeRune(b)
		if r == utf8.RuneError && n == 1 || r == 0xFFFE || r == 0xFFFF {
			return false
		}
		b = b[n:]
	}
	return true
}

// localName reads a name of plain letters and says how long it is; local is nil where it is none, or has more than one
// name space.
func localName(b []byte) (local []byte, n int) {
	colon := -1
	for n < len(b) {
		c := b[n]
		switch {
		case c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c == '_':
		case n > 0 && (c >= '0' && c <= '9' || c == '-' || c == '.'):
		case c == ':' && n > 0 && colon < 0:
			colon = n
		case c == ':' || c >= utf8.RuneSelf || n == 0 || colon == n-1:
			return nil, n
		default:
			return b[colon+1 : n], n
		}
		n++
	}
	return nil, n
}

// named is a name as a string, made once.
func (s *scanner) named(b []byte) string {
	if known, ok := s.names[string(b)]; ok {
		return known
	}
	name := string(b)
	if len(s.names) < mostNames {
		s.names[name] = name
	}
	return name
}
