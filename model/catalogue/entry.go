package catalogue

import (
	"fmt"
	"maps"
	"math"
	"slices"
	"strconv"
	"strings"

	"contralay/model/visible"
	"contralay/model/where"
)

// EntryError is what is wrong with one key of one entry of a catalogue file.
type EntryError struct {
	File    string // name of the file as it was given
	Line    int    // from 1; 0 where no line can be named
	Entry   string // `wire AS22759/32 22`, or `wire number 3` where it has no id
	Key     string // "" where the entry as a whole is meant
	Problem string
	Allowed string // "" where there is nothing to choose from
}

// Error is one line: file and line, entry, key, what is wrong, what is allowed.
func (e EntryError) Error() string {
	var b strings.Builder
	b.WriteString(e.File)
	if e.Line > 0 {
		fmt.Fprintf(&b, ":%d", e.Line)
	}
	for _, part := range []string{e.Entry, e.Key} {
		if part != "" {
			b.WriteString(": ")
			b.WriteString(part)
		}
	}
	b.WriteString(": " + e.Problem)
	if e.Allowed != "" {
		b.WriteString("; allowed: ")
		b.WriteString(e.Allowed)
	}
	return visible.Line(b.String())
}

// entry reads one table of a file key by key. It remembers which keys were asked
// for, so that what is left over is unknown, and gathers what is wrong. Keys are
// matched by exact case: decoding into a struct would not.
type entry struct {
	file, name string
	lines      where.Lines
	path       string // of its table
	vals       map[string]any
	asked      []string
	errs       []error
}

func (e *entry) wrong(key, problem, allowed string) {
	e.errs = append(e.errs, EntryError{e.file, e.lines.Line(e.path + "." + key), e.name, key, problem, allowed})
}

// get returns the value of a key. A key that must be there and is not is wrong.
func (e *entry) get(key string, must bool, allowed string) (any, bool) {
	e.asked = append(e.asked, key)
	v, ok := e.vals[key]
	if !ok && must {
		e.wrong(key, "it is missing", allowed)
	}
	return v, ok
}

// text reads a text; must means not empty either.
func (e *entry) text(key string, must bool) string {
	const allowed = "a text that is not empty"
	v, ok := e.get(key, must, allowed)
	if !ok {
		return ""
	}
	s, isText := v.(string)
	switch {
	case !isText:
		e.wrong(key, shown(v)+" is not a text", allowed)
		return ""
	case must && strings.TrimSpace(s) == "":
		e.wrong(key, "it is empty", allowed)
	case must && strings.TrimSpace(s) != s:
		e.wrong(key, shown(s)+" starts or ends with a space", strconv.Quote(strings.TrimSpace(s)))
	default:
		e.oneLine(key, s, key == "id" || key == "spec" || key == "size")
	}
	return s
}

// oneLine says what a text of one line must not hold.
func (e *entry) oneLine(key, s string, id bool) {
	if says, allowed := visible.Fault(s, id); says != "" {
		e.wrong(key, says, allowed)
	}
}

// word reads one of a few words. It must be there.
func (e *entry) word(key string, words ...string) string {
	allowed := strings.Join(words, ", ")
	v, ok := e.get(key, true, allowed)
	if !ok {
		return ""
	}
	s, isText := v.(string)
	if !isText || !slices.Contains(words, s) {
		e.wrong(key, shown(v)+" is not one of these words", allowed)
	}
	return s
}

// standing reads a standing; one that may be left out takes the value of or.
func (e *entry) standing(key string, must bool, or Standing) Standing {
	const allowed = "house, published, practice, memory"
	v, ok := e.get(key, must, allowed)
	if !ok {
		return or
	}
	s, _ := v.(string)
	if !Standing(s).Known() {
		e.wrong(key, shown(v)+" is not a standing", allowed)
	}
	return Standing(s)
}

// origin reads source and standing, which every entry must have.
func (e *entry) origin() Origin {
	return Origin{Source: e.text("source", true), Standing: e.standing("standing", true, "")}
}

// span is the numbers a key may take, both ends included. It keeps figures inside
// what a calculation can multiply and divide without leaving the numbers.
type span struct{ lo, hi float64 }

func (s span) String() string {
	return "a number from " + plain(s.lo) + " to " + plain(s.hi)
}

// number reads a number. One that may be left out is 0 then; 0 written down is
// the same as left out.
func (e *entry) number(key string, must bool, in span) float64 {
	v, ok := e.get(key, must, in.String())
	if !ok {
		return 0
	}
	return e.inSpan(key, v, in, !must)
}

// inSpan checks a value and returns it, or 0 with the trouble noted.
func (e *entry) inSpan(key string, v any, in span, zero bool) float64 {
	var f float64
	switch n := v.(type) {
	case float64:
		f = n
	case int64:
		f = float64(n)
	default:
		e.wrong(key, shown(v)+" is not a number", in.String())
		return 0
	}
	// Written so that NaN, which compares with nothing, is outside.
	if !(f >= in.lo && f <= in.hi) && !(zero && f == 0) {
		e.wrong(key, shown(v)+" is out of range", in.String())
		return 0
	}
	return f + 0 // −0 becomes 0
}

// whole reads a whole number.
func (e *entry) whole(key string, must bool, lo, hi int) int {
	allowed := fmt.Sprintf("a whole number from %d to %d", lo, hi)
	v, ok := e.get(key, must, allowed)
	if !ok {
		return 0
	}
	n, isWhole := v.(int64)
	if !isWhole || n < int64(lo) || n > int64(hi) {
		e.wrong(key, shown(v)+" is not a whole number in that range", allowed)
		return 0
	}
	return int(n)
}

// flag reads true or false. It must be there.
func (e *entry) flag(key string) bool {
	v, ok := e.get(key, true, "true, false")
	if !ok {
		return false
	}
	b, isFlag := v.(bool)
	if !isFlag {
		e.wrong(key, shown(v)+" is neither true nor false", "true, false")
	}
	return b
}

// list reads a list of different texts that are not empty; it may be left out.
func (e *entry) list(key string) []string {
	const allowed = `a list of different texts, ["A", "B"]`
	v, ok := e.get(key, false, allowed)
	if !ok {
		return nil
	}
	vs, isList := v.([]any)
	if !isList {
		e.wrong(key, shown(v)+" is not a list", allowed)
		return nil
	}
	out := make([]string, 0, len(vs))
	seen := map[string]bool{}
	for _, v := range vs {
		s, isText := v.(string)
		switch {
		case !isText || s == "" || strings.TrimSpace(s) != s:
			e.wrong(key, shown(v)+" is not a text of that kind", allowed)
		case seen[s]:
			e.wrong(key, shown(v)+" is in the list twice", allowed)
		default:
			e.oneLine(key, s, true)
		}
		seen[s] = true
		out = append(out, s)
	}
	return out
}

// done reports every key that nobody asked for.
func (e *entry) done() []error {
	for _, key := range slices.Sorted(maps.Keys(e.vals)) {
		if !slices.Contains(e.asked, key) {
			e.wrong(key, "unknown key", strings.Join(e.asked, ", "))
		}
	}
	return e.errs
}

// shown is a value as a file would have it, for a message.
func shown(v any) string {
	switch x := v.(type) {
	case string:
		return strconv.Quote(x)
	case float64:
		if math.IsInf(x, 0) {
			return strings.ToLower(strings.TrimPrefix(strconv.FormatFloat(x, 'f', -1, 64), "+"))
		}
		return strings.ToLower(plain(x))
	case int64, bool:
		return fmt.Sprint(x)
	case []any, []map[string]any:
		return "a list"
	case map[string]any:
		return "a table"
	}
	return "a date or time"
}

func plain(f float64) string {
	if math.Abs(f) >= 1e15 {
		return strconv.FormatFloat(f, 'g', -1, 64)
	}
	return strconv.FormatFloat(f, 'f', -1, 64)
}
