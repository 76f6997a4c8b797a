package file_test

import (
	"errors"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"contralay/model/file"
)

func TestBrokenFiles(t *testing.T) {
	for _, tt := range broken {
		t.Run(tt.name, func(t *testing.T) {
			_, err := file.Parse([]byte(tt.text), "f.toml")
			if err == nil {
				t.Fatal("it loads")
			}
			if diff := cmp.Diff(strings.TrimPrefix(tt.want, "\n"), err.Error()); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
			linesHoldTheirKeys(t, tt.text, err)
			var one *file.Error
			if !errors.As(err, &one) || one.File != "f.toml" {
				t.Errorf("the error holds no *Error of the file: %#v", err)
			}
		})
	}
}

// linesHoldTheirKeys checks the line numbers against the text itself: on the line
// that an error names stands the key that it names, or a header where the key is
// missing.
func linesHoldTheirKeys(t *testing.T, text string, err error) {
	t.Helper()
	var all file.Errors
	if !errors.As(err, &all) {
		t.Fatalf("%T is no file.Errors", err)
	}
	lines := strings.Split(text, "\n")
	for _, e := range all {
		_, key, ok := strings.Cut(e.Where, "key ")
		if strings.HasPrefix(e.Says, "it is missing") {
			key = "["
		}
		key = strings.ReplaceAll(key, "␛", `\u001B`) // as the file writes it
		if e.Line > 0 && ok && e.Where != "key format" && !strings.Contains(lines[e.Line-1], key) {
			t.Errorf("line %d is %q, without %q", e.Line, lines[e.Line-1], key)
		}
	}
}
