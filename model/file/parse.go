package file

import (
	"errors"
	"fmt"
	"io"
	"strings"

	"github.com/BurntSushi/toml"

	"contralay/model"
	"contralay/model/file/schema"
	"contralay/model/visible"
	"contralay/model/where"
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

// Load reads the file at path. An error is Errors where the file is wrong, else it says why it
// cannot be read.
func Load(path string) (Document, error) {
	text, err := Text(path)
	if err != nil {
		return Document{}, err
	}
	return Parse(text, path)
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
		return Document{}, Errors{{File: name, Says: fmt.Sprintf("the file is larger than %d MiB: that is not a harness", maxSize>>20)}}
	}
	source := strings.TrimPrefix(string(text), "\xef\xbb\xbf") // byte order mark of some editors
	s := where.Scan(source)
	if s.TooDeep > 0 {
		return Document{}, Errors{{name, s.TooDeep, "",
			fmt.Sprintf("brackets in brackets, or the parts of a key, are nested too deep; allowed: %d",
				where.MaxDeep)}}
	}
	var raw map[string]any
	if _, err := toml.Decode(source, &raw); err != nil {
		return Document{}, Errors{syntax(name, err)}
	}
	var doc Document
	if err := limited(name, located(schema.Read(raw, &doc.Harness), name, s.Lines)); err != nil {
		return Document{}, err
	}
	doc.Head = headOf(source)
	doc.LostComments = lost(s.Comments, source)
	return doc, nil
}

// located gives each fault of a file its line.
func located(faults []schema.Fault, name string, lines where.Lines) Errors {
	all := make(Errors, len(faults))
	for i, f := range faults {
		line := lines.Line(f.Path)
		if f.Path == schema.FormatPath {
			line = max(1, line) // where it is missing it belongs at the head
		}
		all[i] = &Error{File: name, Line: line, Where: f.Where, Says: f.Says}
	}
	return all
}

func syntax(name string, err error) *Error {
	var at toml.ParseError
	if errors.As(err, &at) {
		return &Error{File: name, Line: max(1, at.Position.Line),
			Says: "this is not TOML: " + visible.Line(strings.TrimSuffix(at.Message, "."))}
	}
	return &Error{File: name, Says: "this is not TOML: " + visible.Line(err.Error())}
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
