package keep

import (
	"errors"
	"fmt"
	"io/fs"
	"path/filepath"
	"strings"

	"contralay/model/file"
	"contralay/ui/paper/filename"
)

// keepRevision keeps the file of an earlier revision beside the one that is about to take
// its place, as loom-rev-C.toml; one that is kept already is not touched. A file that cannot
// be read is left to the save, which keeps it as .bak.
func keepRevision(path string, d file.Document) error {
	text, err := file.Text(path)
	if err != nil {
		return nil // nothing is there, or the save will say why not
	}
	old, err := file.Parse(text, path)
	if err != nil {
		return nil
	}
	was, is := old.Harness.Head.Revision.V, d.Harness.Head.Revision.V
	if was == is || was == "" {
		return nil
	}
	name := revisionName(path, was)
	if err := file.WriteNew(name, text); err != nil && !errors.Is(err, fs.ErrExist) {
		return fmt.Errorf("%s was not saved, because revision %s cannot be kept in its folder: %w", path, was, err)
	}
	return nil
}

// revisionName is where a revision is kept, spelled so that any disk takes it.
func revisionName(path, revision string) string {
	return strings.TrimSuffix(path, filepath.Ext(path)) + "-rev-" + filename.OnDisk(revision) + filepath.Ext(path)
}
