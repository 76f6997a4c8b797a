package runlog

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"strconv"
	"strings"
	"unicode/utf8"

	"contralay/model"
	"contralay/model/file/schema"
	"contralay/model/visible"
)

// Do is what a line says.
type Do string

// What a line says. Saving stands before the file of the harness is written, Saved after it: between
// the two the file is the old or the new one, and Sum tells which.
const (
	Change Do = ""       // a build had Was and now has Is
	Open   Do = "open"   // there is a build of this serial
	Close  Do = "close"  // there is none, if nothing was done of it
	Saving Do = "saving" // all before is in the file whose sum is Sum, if that is its sum
	Saved  Do = "saved"  // all before is in the file
)

// Line is one line of a log, but the first.
type Line struct {
	Bench  string // who wrote it: one name for each bench, by chance
	Design string // sum of the harness, without what is built, that the bench goes by
	Do     Do
	Serial string
	Was    model.Build // what of the build is no more; its serial is ""
	Is     model.Build // what is there instead
	Sum    string      // of the file that is saved
}

// MostLine is the longest line that is read, in bytes; MostBytes the longest log. A layer of 130
// wires takes 8,000 in one line: these are stops, not limits of use.
const (
	MostLine  = 1 << 20
	MostBytes = 64 << 20
)

// text is a line as it is written.
type text struct {
	Bench  string         `json:"bench,omitempty"`
	Design string         `json:"design,omitempty"`
	Do     Do             `json:"do,omitempty"`
	Serial string         `json:"serial,omitempty"`
	Was    map[string]any `json:"was,omitempty"`
	Is     map[string]any `json:"is,omitempty"`
	Sum    string         `json:"sum,omitempty"`
}

// Encode writes lines, each with its line feed.
func Encode(lines []Line) []byte {
	var out bytes.Buffer
	e := json.NewEncoder(&out) // it ends each value with a line feed, and writes none within
	e.SetEscapeHTML(false)
	for _, l := range lines {
		_ = e.Encode(text{l.Bench, l.Design, l.Do, l.Serial, raw(l.Was), raw(l.Is), l.Sum}) // texts and finite numbers: it cannot fail
	}
	return out.Bytes()
}

func raw(b model.Build) map[string]any {
	out := schema.RawBuild(&b)
	delete(out, "serial") // it stands before
	return out
}

// Decode reads one line, without its line feed. The error says what is wrong with it, as the rest of
// a sentence that begins with its number.
func Decode(line []byte) (Line, error) {
	if len(line) > MostLine {
		return Line{}, fmt.Errorf("it is longer than %d bytes", MostLine)
	}
	if !utf8.Valid(line) {
		return Line{}, errors.New("it is not text in UTF-8")
	}
	d := json.NewDecoder(bytes.NewReader(line))
	d.UseNumber()
	d.DisallowUnknownFields()
	var t text
	if err := d.Decode(&t); err != nil {
		return Line{}, fmt.Errorf("it is no line of a run log: %s", visible.Line(err.Error()))
	}
	if _, err := d.Token(); !errors.Is(err, io.EOF) {
		return Line{}, errors.New("it holds more than one object")
	}
	for _, s := range []struct {
		key, text string
		id        bool
	}{{"bench", t.Bench, true}, {"design", t.Design, true}, {"serial", t.Serial, true}, {"sum", t.Sum, true}} {
		if says, allowed := visible.Fault(s.text, s.id); says != "" {
			return Line{}, fmt.Errorf("its %s %s; allowed: %s", s.key, says, allowed)
		}
	}
	l := Line{Bench: t.Bench, Design: t.Design, Do: t.Do, Serial: t.Serial, Sum: t.Sum}
	var err error
	if l.Was, err = build(t.Was); err == nil {
		l.Is, err = build(t.Is)
	}
	switch {
	case err != nil:
		return Line{}, err
	case t.Do != Change && (t.Was != nil || t.Is != nil):
		return Line{}, fmt.Errorf("%q is said with what was built", string(t.Do))
	}
	switch t.Do {
	case Change, Open, Close:
		if t.Serial == "" {
			return Line{}, errors.New("it has no serial")
		}
	case Saving, Saved:
		if t.Sum == "" {
			return Line{}, errors.New("it has no sum")
		}
	default:
		return Line{}, fmt.Errorf("do is %s; allowed: open, close, saving, saved, or none", visible.Quoted(string(t.Do)))
	}
	return l, nil
}

// build reads part of a build, by the rules of a file.
func build(raw map[string]any) (model.Build, error) {
	if raw == nil {
		return model.Build{}, nil
	}
	if _, given := raw["serial"]; given {
		return model.Build{}, errors.New("the serial stands within was or is; allowed: before them")
	}
	whole := numbers(raw).(map[string]any)
	whole["serial"] = "-"
	b, faults := schema.ReadBuild(whole)
	if len(faults) > 0 {
		f := faults[0]
		return model.Build{}, errors.New(strings.TrimPrefix(f.Where+": ", ": ") + f.Says)
	}
	b.Serial = ""
	return b, nil
}

// numbers gives the numbers of a JSON value the types that a decoder of TOML gives: a whole number
// written without point or exponent is a count.
func numbers(v any) any {
	switch v := v.(type) {
	case json.Number:
		if n, err := strconv.ParseInt(v.String(), 10, 64); err == nil {
			return n
		}
		f, err := v.Float64()
		if err != nil {
			return v.String() // no key takes a text for a number, and says so
		}
		return f
	case map[string]any:
		for k := range v {
			v[k] = numbers(v[k])
		}
	case []any:
		for k := range v {
			v[k] = numbers(v[k])
		}
	}
	return v
}

// The first line of a log: its name and format, what it is called, the sum of the file that it was
// begun on ("-" of none).
const (
	firstWords = "contralay run log "
	format     = "1"
)

// First is the first line of a log.
func First(id, sum string) []byte {
	if sum == "" {
		sum = "-"
	}
	return []byte(firstWords + format + " " + id + " " + sum + "\n")
}

// ReadFirst reads the first line, without its line feed.
func ReadFirst(line []byte) (id, sum string, err error) {
	rest, ours := strings.CutPrefix(string(line), firstWords)
	if !ours || len(line) > 1000 || !utf8.Valid(line) {
		return "", "", errors.New("it is no run log of contralay")
	}
	parts := strings.Split(rest, " ")
	if n, err := strconv.Atoi(parts[0]); err == nil && n > 1 {
		return "", "", fmt.Errorf("it is a run log of format %d, from a newer contralay: open the harness with that one", n)
	}
	if len(parts) != 3 || parts[0] != format || parts[1] == "" {
		return "", "", errors.New("it is no run log of contralay")
	}
	for _, s := range parts {
		if says, _ := visible.Fault(s, true); says != "" {
			return "", "", errors.New("it " + says)
		}
	}
	if parts[2] == "-" {
		parts[2] = ""
	}
	return parts[1], parts[2], nil
}
