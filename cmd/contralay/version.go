package main

import (
	"runtime/debug"
	"strings"

	"contralay/ui/paper/origin"
)

// version prints the release, and the commit that the program was built from with its date.
func version(args []string, w world) (int, error) {
	if len(args) > 0 {
		return usage, misuse{"version takes nothing"}
	}
	info, _ := debug.ReadBuildInfo()
	return ok, print(w.out, "contralay "+origin.Release+", "+builtFrom(info)+"\n")
}

// builtFrom says which commit a program was built from, as the Go tools wrote it into the program; nil where they did not.
func builtFrom(info *debug.BuildInfo) string {
	set := map[string]string{}
	if info != nil {
		for _, s := range info.Settings {
			set[s.Key] = s.Value
		}
	}
	commit := set["vcs.revision"]
	if commit == "" {
		return "built without a record of its commit"
	}
	text := "commit " + commit[:min(len(commit), 12)]
	if day, _, ok := strings.Cut(set["vcs.time"], "T"); ok {
		text += " of " + day
	}
	if set["vcs.modified"] == "true" {
		text += ", with changes that are in no commit"
	}
	return text
}
