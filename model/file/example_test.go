package file_test

import (
	"os"
	"testing"

	"github.com/google/go-cmp/cmp"

	"contralay/model/file"
)

// Both files of testdata are written by hand; saving them must change nothing.
func TestFilesSaveByteEqual(t *testing.T) {
	for _, name := range []string{"example.toml", "every-key.toml"} {
		t.Run(name, func(t *testing.T) {
			path := "../../testdata/" + name
			want, err := os.ReadFile(path)
			if err != nil {
				t.Fatal(err)
			}
			d, err := file.Load(path)
			if err != nil {
				t.Fatal(err)
			}
			if diff := cmp.Diff(string(want), string(file.Encode(d))); diff != "" {
				t.Errorf("saved text differs (-file +saved):\n%s", diff)
			}
			if d.LostComments != 0 {
				t.Errorf("%d comments would be lost, want none", d.LostComments)
			}
		})
	}
}
