// Package ways works out beside the screen how the branch in hand could be otherwise, keeps what came of it, and sets
// it side by side: kinds of change with their ways, outcomes with their figures, and the columns that compare them with
// the branch as it is. It changes nothing; the step Layers takes and keeps what is chosen.
package ways
