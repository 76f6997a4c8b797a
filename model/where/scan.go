package where

import (
	"fmt"
	"strconv"
	"strings"
)

// Lines says on which line a key or the header of a table stands. A path is
// written ".branch[2].layer[0].of", lists counted from 0.
type Lines map[string]int

// Line is where a path stands or, where the text does not have it, the nearest
// table round it; 0 where there is none.
func (p Lines) Line(path string) int {
	for path != "" {
		if n, ok := p[path]; ok {
			return n
		}
		path = path[:max(0, strings.LastIndexAny(path, ".["))]
	}
	return 0
}

// Found is what a scan finds in a text.
type Found struct {
	Lines    Lines
	Comments []int // lines with a comment
	TooDeep  int   // the line on which MaxDeep was passed; 0 where it was not
}

// MaxDeep is how deep brackets may stand in each other and how many parts a key
// may have. A harness needs three; without a limit a hostile file of brackets
// alone would exhaust the stack of the TOML reader.
const MaxDeep = 32

// scanner walks a TOML text for lines and comments. It takes the text for valid:
// on one that is not it finds less, never hangs, and the TOML reader says why.
type scanner struct {
	text     string
	at       int
	line     int
	lines    Lines
	counts   map[string]int // tables of a list so far, by path
	prefix   string         // path of the table that keys belong to
	comments []int          // lines with a comment
	tooDeep  bool           // MaxDeep was passed, on line
}

// Scan looks a text through.
func Scan(text string) Found {
	s := scan(text)
	found := Found{Lines: s.lines, Comments: s.comments}
	if s.tooDeep {
		found.TooDeep = s.line
	}
	return found
}

func scan(text string) *scanner {
	s := &scanner{text: text, line: 1, lines: Lines{}, counts: map[string]int{}}
	for !s.tooDeep {
		s.space(true)
		switch s.peek() {
		case 0:
			if s.at >= len(s.text) {
				return s
			}
			s.next()
		case '[':
			s.header()
		default:
			start := s.at
			s.pair(s.prefix, 0)
			if s.at == start {
				s.next()
			}
		}
	}
	return s
}

// peek is the byte that comes next, 0 at the end.
func (s *scanner) peek() byte {
	if s.at < len(s.text) {
		return s.text[s.at]
	}
	return 0
}

func (s *scanner) next() {
	if s.peek() == '\n' {
		s.line++
	}
	s.at++
}

func (s *scanner) has(prefix string) bool {
	return strings.HasPrefix(s.text[min(s.at, len(s.text)):], prefix)
}

// space passes blanks, and with lines also newlines and comments.
func (s *scanner) space(lines bool) {
	for s.at < len(s.text) {
		switch c := s.peek(); {
		case c == ' ' || c == '\t' || lines && (c == '\n' || c == '\r'):
			s.next()
		case lines && c == '#':
			s.comments = append(s.comments, s.line)
			for s.at < len(s.text) && s.peek() != '\n' {
				s.next()
			}
		default:
			return
		}
	}
}

// header reads [a.b] or [[a.b]]. A part that is a list of tables stands for its
// last one.
func (s *scanner) header() {
	line, list := s.line, s.has("[[")
	for s.peek() == '[' {
		s.next()
	}
	path, parts := "", s.key()
	for i, name := range parts {
		path += "." + name
		if list && i == len(parts)-1 {
			s.counts[path]++
			s.mark(path, line)
		}
		if n := s.counts[path]; n > 0 {
			path += "[" + strconv.Itoa(n-1) + "]"
		}
	}
	s.mark(path, line)
	s.prefix = path
	for s.peek() == ']' {
		s.next()
	}
}

// mark keeps the first line of a path.
func (s *scanner) mark(path string, line int) {
	if _, known := s.lines[path]; !known {
		s.lines[path] = line
	}
}

// key reads a dotted key up to what ends it.
func (s *scanner) key() []string {
	var parts []string
	for {
		s.space(false)
		start := s.at
		if c := s.peek(); c == '"' || c == '\'' {
			s.quoted()
		} else {
			for !strings.ContainsRune("\x00.=[]{}#,\"' \t\r\n", rune(s.peek())) {
				s.next()
			}
		}
		parts = append(parts, bare(s.text[start:s.at]))
		if len(parts) > MaxDeep {
			s.tooDeep = true
			return parts
		}
		s.space(false)
		if s.peek() != '.' {
			return parts
		}
		s.next()
	}
}

// bare takes the quotes off a key.
func bare(name string) string {
	if len(name) < 2 || name[0] != '"' && name[0] != '\'' {
		return name
	}
	if plain, err := strconv.Unquote(name); err == nil && name[0] == '"' {
		return plain
	}
	return name[1 : len(name)-1]
}

// pair reads key = value into the table at path.
func (s *scanner) pair(path string, deep int) {
	line := s.line
	for _, name := range s.key() {
		path += "." + name
	}
	s.mark(path, line)
	if s.peek() == '=' {
		s.next()
		s.value(path, deep)
	}
}

// value reads what stands after "=", tables inside it too.
func (s *scanner) value(path string, deep int) {
	if deep > MaxDeep {
		s.tooDeep = true
	}
	s.space(false)
	switch {
	case s.tooDeep:
	case s.peek() == '"' || s.peek() == '\'':
		s.quoted()
	case s.peek() == '[':
		s.mark(path, s.line)
		s.inside(']', func(i int) { s.value(fmt.Sprintf("%s[%d]", path, i), deep+1) })
	case s.peek() == '{':
		s.mark(path, s.line)
		s.inside('}', func(int) { s.pair(path, deep+1) })
	default:
		for !strings.ContainsRune("\x00,]}#\r\n", rune(s.peek())) {
			s.next()
		}
	}
}

// inside reads the items of a list or an inline table up to end.
func (s *scanner) inside(end byte, item func(i int)) {
	s.next()
	for i := 0; !s.tooDeep; i++ {
		s.space(true)
		if s.peek() == end {
			s.next()
			return
		}
		start := s.at
		item(i)
		s.space(true)
		if s.peek() == ',' {
			s.next()
		} else if s.at == start { // not TOML: leave it to the reader
			return
		}
	}
}

// quoted passes a string of any of the four kinds.
func (s *scanner) quoted() {
	q := s.text[s.at : s.at+1]
	long := s.has(q + q + q)
	if long {
		q += q + q
	}
	escapes := q[0] == '"'
	for range q {
		s.next()
	}
	for s.at < len(s.text) {
		switch {
		case escapes && s.peek() == '\\':
			s.next()
			if s.at < len(s.text) {
				s.next()
			}
		case s.has(q):
			for range q {
				s.next()
			}
			for long && s.peek() == q[0] { // up to two quotes may stand before the end
				s.next()
			}
			return
		case !long && s.peek() == '\n':
			return
		default:
			s.next()
		}
	}
}
