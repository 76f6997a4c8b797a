package file

import (
	"errors"
	"fmt"
	"io"
	"os"
	"strings"

	"github.com/BurntSushi/toml"

	"contralay/model"
)

// Document is a file in memory.
type Document struct {
	Harness      model.Harness
	Head         string // comment block at the head, each line with its "#"
	LostComments int    // lines with another comment, which a save would lose
}

// maxSize is the size of a file that is still read, in bytes. A loom of a thousand
// wires has some 200,000: this is a stop, not a limit of use.
const maxSize = 8 << 20

// Load reads the file at path. An error is Errors where the file is wrong, else
// that of the operating system, wrapped.
func Load(path string) (Document, error) {
	f, err := os.Open(path)
	if err != nil {
		return Document{}, fmt.Errorf("cannot read the harness: %w", err)
	}
	defer f.Close()
	if info, err := f.Stat(); err == nil && info.IsDir() {
		return Document{}, fmt.Errorf("cannot read the harness: %s is a folder", path)
	}
	return Read(f, path)
}

// Read reads a file of up to 8 MiB; name is only for messages.
func Read(r io.Reader, name string) (Document, error) {
	text, err := io.ReadAll(io.LimitReader(r, maxSize+1))
	if err != nil {
		return Document{}, fmt.Errorf("%s: cannot read the harness: %w", name, err)
	}
	return Parse(text, name)
}

// Parse reads the text of a file; name is only for messages. An error is Errors,
// and the Document then is empty.
func Parse(text []byte, name string) (Document, error) {
	if len(text) > maxSize {
		return Document{}, Errors{{File: name, Says: fmt.Sprintf("is larger than %d MiB, which is not a harness", maxSize>>20)}}
	}
	source := strings.TrimPrefix(string(text), "\xef\xbb\xbf") // byte order mark of some editors
	s := scan(source)
	if s.tooDeep {
		return Document{}, Errors{{name, s.line, "", fmt.Sprintf("brackets in brackets, or parts of a key, go too deep; allowed: %d",
			maxDeep)}}
	}
	var raw map[string]any
	if _, err := toml.Decode(source, &raw); err != nil {
		return Document{}, Errors{syntax(name, err)}
	}
	d := &decoder{file: name, lines: s.lines, at: map[string]bool{}}
	var doc Document
	if d.format(raw); len(d.errs) > 0 {
		return Document{}, d.errs
	}
	readTable(d, document(), &doc.Harness, raw, place{})
	d.check(&doc.Harness)
	if err := limited(name, d.errs); err != nil {
		return Document{}, err
	}
	doc.Head = headOf(source)
	doc.LostComments = lost(s.comments, source)
	return doc, nil
}

// format is judged before anything else: of another format nothing is known.
func (d *decoder) format(raw map[string]any) {
	k := formatKey()
	at := place{}.key(k.name)
	v, given := raw[k.name]
	if !given {
		d.errs = append(d.errs, &Error{d.file, 1, at.where, fmt.Sprintf("is missing; this program reads format = %d", Format)})
		return
	}
	if p := k.put(nil, v); p != "" {
		d.say(at, p)
	}
}

// check adds what the model finds, where the value was read without a complaint.
// Without its ids, or a whole table, a file would only be blamed for what was said
// already.
func (d *decoder) check(h *model.Harness) {
	for at := range d.at {
		if strings.HasSuffix(at, ".id") || strings.Count(at, ".") == 1 {
			return
		}
	}
	for _, f := range h.Check() {
		at := place{fmt.Sprintf(".%s[%d]", f.Table, f.Index), calls(f.Table, f.ID, f.Index)}
		if f.Sub != "" {
			at = place{fmt.Sprintf("%s.%s[%d]", at.path, f.Sub, f.SubIndex), comma(at.where, calls(f.Sub, "", f.SubIndex))}
		}
		at = at.key(f.Key)
		if d.at[at.path] {
			continue
		}
		d.errs = append(d.errs, &Error{d.file, d.lines.line(at.path), at.where, string(bad(f.Says, f.Allowed))})
	}
}

func syntax(name string, err error) *Error {
	var at toml.ParseError
	if errors.As(err, &at) {
		return &Error{File: name, Line: max(1, at.Position.Line), Says: "not TOML: " + strings.TrimSuffix(at.Message, ".")}
	}
	return &Error{File: name, Says: "not TOML: " + err.Error()}
}

// lost counts the lines with a comment below the head.
func lost(comments []int, source string) int {
	_, head := headEnd(source)
	n := 0
	for _, line := range comments {
		if line > head {
			n++
		}
	}
	return n
}
