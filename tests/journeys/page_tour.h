#pragma once

#include "app/pages/prompts.h"
#include "app/window/main_window.h"
#include "app/wording/language.h"
#include "tests/support/fixed_clock.h"
#include "tests/support/typing.h"

#include <QTemporaryDir>

#include <array>
#include <functional>
#include <ostream>
#include <string>

namespace rig::test {

// Every page, and what comes on it while somebody works there, one after the other in the demonstration. At
// each place whoever was handed in looks at the window.
class PageTour
{
public:
    using Look = std::function<void(MainWindow& window, const std::string& where)>;

    explicit PageTour(Look look, const QString& language = QStringLiteral("en"));

    void welcome();
    void moments();
    void trends();
    void annual();
    void rigging();
    void second();
    void controlCheck();
    void learning();
    void setUp();
    void paper();
    void questions();
    void beside(); // faults, conflicts, copies, the manual

private:
    void openDemo();
    void look(const std::string& where);
    void click(const std::string& name);
    bool clickIfThere(const std::string& name);
    void choose(const char* box, int index);
    void begin();
    void toTheReading();

    Look m_look;
    Speech m_speech;
    FixedClock m_clock;
    WindowPrompts m_prompts;
    QTemporaryDir m_folder;
    MainWindow m_window;
    Typist m_typist;
};

// A part of the tour, as the tests go it.
struct TourPart
{
    const char* name;
    void (PageTour::*go)();

    friend std::ostream& operator<<(std::ostream& out, const TourPart& part) { return out << part.name; }
};

inline constexpr std::array kTourParts{
    TourPart{"Welcome", &PageTour::welcome},      TourPart{"Moments", &PageTour::moments},
    TourPart{"Trends", &PageTour::trends},        TourPart{"Annual", &PageTour::annual},
    TourPart{"Rigging", &PageTour::rigging},      TourPart{"SecondPerson", &PageTour::second},
    TourPart{"Control", &PageTour::controlCheck}, TourPart{"Learning", &PageTour::learning},
    TourPart{"SetUp", &PageTour::setUp},          TourPart{"Paper", &PageTour::paper},
    TourPart{"Questions", &PageTour::questions},  TourPart{"Beside", &PageTour::beside}};

} // namespace rig::test
