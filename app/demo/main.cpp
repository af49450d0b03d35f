// rigband-demo-maker FILE: tells the demonstration into a new file, without its photos. Run when the program
// is built; the window opens copies of that file.

#include "core/demo/demo.h"
#include "core/store/store_file.h"

#include <cstdio>

int main(int argc, char* argv[])
{
    if (argc != 2) {
        std::fputs("rigband-demo-maker FILE\n", stderr);
        return 2;
    }
    const rig::SystemClock clock;
    const auto file = rig::StoreFile::open(argv[1], rig::OpenAs::New, clock);
    const rig::Outcome built = file ? rig::buildDemo(*file.value()) : rig::Outcome{file.problem()};
    if (built)
        return 0;
    std::fprintf(stderr, "%s: %s\n", argv[1], built.problem().detail.c_str());
    return 1;
}
