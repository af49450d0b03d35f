// rigband-demo-maker LANGUAGE FILE: tells the demonstration in one language ("de") into a new file, without
// its photos. Run when the program is built; the window opens copies of that file.

#include "core/demo/demo.h"
#include "core/store/store_file.h"

#include <cstdio>

int main(int argc, char* argv[])
{
    const auto language = rig::demo::languageOf(argc == 3 ? argv[1] : "");
    if (argc != 3 || rig::demo::codeOf(language) != argv[1]) {
        std::fputs("rigband-demo-maker en|de|fr FILE\n", stderr);
        return 2;
    }
    const rig::SystemClock clock;
    const auto file = rig::StoreFile::open(argv[2], rig::OpenAs::New, clock);
    const rig::Outcome built = file ? rig::buildDemo(*file.value(), language) : rig::Outcome{file.problem()};
    if (built)
        return 0;
    std::fprintf(stderr, "%s: %s\n", argv[2], built.problem().detail.c_str());
    return 1;
}
