#pragma once

#include "app/theme/theme.h"

#include <QObject>
#include <QString>

#include <memory>

namespace rig {

class Clock;
class MainWindow;
class Prompts;
class Speech;

// The window and the language that it speaks. Every word of a window is set when it is made, so that in
// another language it is made anew around the same file.
class Program : public QObject
{
    Q_OBJECT

public:
    // In the language that was chosen last, else in the system's; as large and as dark as it was left, else
    // as the `desktop` is. `clock` and `prompts` outlive it.
    Program(const Clock& clock, Prompts& prompts, const Look& desktop);
    ~Program() override;

    MainWindow& window() { return *m_window; }
    void setLook(const Look& look);
    // Where it was left, if that is on a screen of today; else at its usual size.
    void show();
    // Remembers the language; what somebody typed has been asked about before.
    void speak(const QString& code);

private:
    void makeWindow();
    void remember() const;

    const Clock& m_clock;
    Prompts& m_prompts;
    std::unique_ptr<Speech> m_speech;
    std::unique_ptr<MainWindow> m_window;
};

} // namespace rig
