// Command release builds contralay for each platform it is given out for, with a file of checksums that
// `sha256sum -c` reads. It needs Go, and a checkout without changes that are in no commit.
//
//	go run ./cmd/release -o FOLDER
package main

import (
	"crypto/sha256"
	"errors"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

// platforms are what a release is built for.
func platforms() []string {
	return []string{"darwin/amd64", "darwin/arm64", "linux/amd64", "linux/arm64", "windows/amd64", "windows/arm64"}
}

const sumsName = "SHA256SUMS"

func main() {
	folder := flag.String("o", "", "the folder to write to; it may not exist yet")
	only := flag.String("only", "", "one platform, such as linux/amd64 (default: all)")
	dirty := flag.Bool("uncommitted", false, "build also where changes are in no commit; version says so")
	flag.Parse()
	if err := release(*folder, *only, *dirty); err != nil {
		fmt.Fprintln(os.Stderr, "release:", err)
		os.Exit(1)
	}
}

// release builds the platforms into a folder that it makes.
func release(folder, only string, dirty bool) error {
	if folder == "" || flag.NArg() > 0 {
		return errors.New("give the folder to write to: go run ./cmd/release -o FOLDER")
	}
	all := platforms()
	if only != "" {
		if !strings.Contains(" "+strings.Join(all, " ")+" ", " "+only+" ") {
			return fmt.Errorf("-only %q: give one of %s", only, strings.Join(all, ", "))
		}
		all = []string{only}
	}
	if !dirty {
		text, err := exec.Command("git", "status", "--porcelain").Output()
		if err != nil {
			return fmt.Errorf("git does not tell whether all is committed: %w", err)
		}
		if len(text) > 0 {
			return errors.New("some changes are in no commit. Commit them, or give -uncommitted; version then says so")
		}
	}
	if err := os.Mkdir(folder, 0o755); err != nil {
		return fmt.Errorf("the folder is made anew for each release: %w", err)
	}
	var sums strings.Builder
	for _, p := range all {
		name, err := build(folder, p)
		if err != nil {
			return err
		}
		data, err := os.ReadFile(filepath.Join(folder, name))
		if err != nil {
			return err
		}
		fmt.Fprintf(&sums, "%x  %s\n", sha256.Sum256(data), name)
		fmt.Printf("%s, %.1f MB\n", name, float64(len(data))/1e6)
	}
	return os.WriteFile(filepath.Join(folder, sumsName), []byte(sums.String()), 0o644)
}

// build builds one platform and gives the name of its file. Paths of this machine stay out of the program.
func build(folder, platform string) (string, error) {
	system, arch, _ := strings.Cut(platform, "/")
	name := "contralay-" + system + "-" + arch
	if system == "windows" {
		name += ".exe"
	}
	cmd := exec.Command("go", "build", "-trimpath", "-buildvcs=true", "-ldflags=-s -w", "-o",
		filepath.Join(folder, name), "./cmd/contralay")
	cmd.Env = append(os.Environ(), "GOOS="+system, "GOARCH="+arch, "CGO_ENABLED=0")
	if says, err := cmd.CombinedOutput(); err != nil {
		return "", fmt.Errorf("%s: %w\n%s", platform, err, says)
	}
	return name, nil
}
