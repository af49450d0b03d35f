# A check of the house is shown a small tree with one breach in it, again and again. Sourced by the two tests of
# such checks, which say by `grow FILE LINE` what stands in the tree.
tree=$(mktemp -d)
trap 'rm -rf "$tree"' EXIT
missed=0

# expect found|nothing WHAT FILE LINE
expect() {
    local expected=$1 what=$2 file=$3 line=$4 said=nothing
    rm -rf "${tree:?}"/*
    mkdir -p "$tree"/{core,app} "$tree/$(dirname "$file")"
    grow "$file" "$line"
    "$check" "$tree" >/dev/null || said=found
    [ "$said" = "$expected" ] && return
    printf '%s: expected %s, and it said %s\n' "$what" "$expected" "$said"
    missed=1
}
