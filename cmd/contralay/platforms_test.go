package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"go/types"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
	"testing"

	"contralay/model/shorttest"
)

// platforms are those that there are binaries for.
var platforms = []string{"linux/amd64", "linux/arm64", "darwin/amd64", "darwin/arm64", "windows/amd64", "windows/arm64"}

// Every package and its tests agree with the types of every platform, and with what is used there: what a compiler would
// refuse elsewhere is refused here, without minutes of compiling the library of another platform.
func TestTypesOfEveryPlatform(t *testing.T) {
	if !shorttest.Long() {
		t.Skip("some seconds a platform: in the long form")
	}
	for _, platform := range platforms {
		t.Run(platform, func(t *testing.T) {
			t.Parallel()
			system, machine, _ := strings.Cut(platform, "/")
			p := on(machine)
			own := p.list(t, "GOOS="+system, "GOARCH="+machine, "CGO_ENABLED=0")
			if own < 100 {
				t.Errorf("%d packages of this module, so the check says nothing", own)
			}
			for _, err := range p.wrong {
				t.Error(err)
			}
		})
	}
}

// The check refuses what only one platform has.
func TestTypesOfOnePlatformAreRefused(t *testing.T) {
	if !shorttest.Long() {
		t.Skip("some seconds a platform: in the long form")
	}
	dir := t.TempDir()
	const calls = "package main\n\nimport \"syscall\"\n\nfunc main() { _ = syscall.SIGWINCH }\n"
	for name, text := range map[string]string{"go.mod": "module try\n", "main.go": calls} {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	for system, want := range map[string]int{"linux": 0, "windows": 1} {
		p := on("amd64")
		p.dir = dir
		p.list(t, "GOOS="+system, "GOARCH=amd64", "CGO_ENABLED=0")
		if len(p.wrong) != want {
			t.Errorf("%s: %v, want %d", system, p.wrong, want)
		}
	}
}

// elsewhere is what is known of the packages of a platform.
type elsewhere struct {
	dir   string // of the module; "" is this one
	files *token.FileSet
	sizes types.Sizes
	done  map[string]*types.Package // by import path, the tests of a package apart
	wrong []error
}

// on is a platform with a machine of which nothing is known yet.
func on(machine string) elsewhere {
	return elsewhere{files: token.NewFileSet(), sizes: types.SizesFor("gc", machine),
		done: map[string]*types.Package{"unsafe": types.Unsafe}}
}

// listed is a package as the go command lists it.
type listed struct {
	ImportPath, Dir, ForTest string
	Standard                 bool
	GoFiles                  []string
	ImportMap                map[string]string
	Module                   *struct{ Main bool }
}

// list checks every package of a platform, those that it imports first, and says how many are of this module.
func (p *elsewhere) list(t *testing.T, env ...string) (own int) {
	t.Helper()
	c := exec.Command("go", "list", "-deps", "-test", "-json=ImportPath,Dir,ForTest,Standard,GoFiles,ImportMap,Module", "./...")
	c.Dir = p.dir
	if p.dir == "" {
		c.Dir = filepath.Join("..", "..")
	}
	c.Env = append(os.Environ(), env...)
	var said bytes.Buffer
	c.Stderr = &said
	out, err := c.Output()
	if err != nil {
		t.Fatalf("%v: %s", err, &said)
	}
	for d := json.NewDecoder(bytes.NewReader(out)); ; {
		var at listed
		if err := d.Decode(&at); errors.Is(err, io.EOF) {
			return own
		} else if err != nil {
			t.Fatal(err)
		}
		if at.ImportPath == "unsafe" || strings.HasSuffix(at.ImportPath, ".test") {
			continue
		}
		if at.Module != nil && at.Module.Main {
			own++
		}
		p.check(at)
	}
}

// check is one package: of this module with all that its functions do, of others only what they offer.
func (p *elsewhere) check(at listed) {
	ours := at.Module != nil && at.Module.Main
	base, _, _ := strings.Cut(at.ImportPath, " ")
	again := at.ForTest != "" && at.ForTest != strings.TrimSuffix(base, "_test") // made again for the tests of another
	var files []*ast.File
	for _, name := range at.GoFiles {
		if !filepath.IsAbs(name) {
			name = filepath.Join(at.Dir, name)
		}
		f, err := parser.ParseFile(p.files, name, nil, parser.SkipObjectResolution)
		if err != nil {
			p.wrong = append(p.wrong, err)
			return
		}
		files = append(files, f)
	}
	checks := types.Config{Sizes: p.sizes, IgnoreFuncBodies: !ours || again, FakeImportC: true,
		GoVersion: strings.TrimSpace(runtime.Version()),
		Importer: importing(func(path string) (*types.Package, error) {
			if to, ok := at.ImportMap[path]; ok {
				path = to
			}
			if is := p.done[path]; is != nil {
				return is, nil
			}
			return nil, fmt.Errorf("%s is not listed before %s", path, at.ImportPath)
		}),
		Error: func(err error) {
			if ours {
				p.wrong = append(p.wrong, err)
			}
		}}
	is, _ := checks.Check(base, p.files, files, nil)
	p.done[at.ImportPath] = is
}

// importing is where the types of a package come from.
type importing func(path string) (*types.Package, error)

func (f importing) Import(path string) (*types.Package, error) { return f(path) }
