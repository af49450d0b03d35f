#pragma once

#include <QString>

#include <optional>

class QWidget;

namespace rig {

// Everything a page asks the user in a window of its own; scripted in tests. Each call waits for the answer.
class Prompts
{
public:
    Prompts() = default;
    virtual ~Prompts();
    Prompts(const Prompts&) = delete;
    Prompts& operator=(const Prompts&) = delete;

    virtual void tell(QWidget* parent, const QString& text) = 0;
    // True only when the user pressed the button with `yesText`. Enter and Esc leave everything as it is.
    virtual bool confirm(QWidget* parent, const QString& title, const QString& question,
                         const QString& yesText) = 0;
    // Trimmed and not blank; empty when the user turned away.
    virtual std::optional<QString> askText(QWidget* parent, const QString& title,
                                           const QString& question) = 0;
    // A path, or an empty string when the user turned away.
    virtual QString askNewFile(QWidget* parent, const QString& filter) = 0;
    virtual QString askOpenFile(QWidget* parent, const QString& filter) = 0;
    // Where to write something that can be made again at any time; asks before it takes another file's place.
    virtual QString askSaveFile(QWidget* parent, const QString& filter, const QString& suggestedName) = 0;
};

// The real windows.
class WindowPrompts : public Prompts
{
public:
    void tell(QWidget* parent, const QString& text) override;
    bool confirm(QWidget* parent, const QString& title, const QString& question,
                 const QString& yesText) override;
    std::optional<QString> askText(QWidget* parent, const QString& title, const QString& question) override;
    QString askNewFile(QWidget* parent, const QString& filter) override;
    QString askOpenFile(QWidget* parent, const QString& filter) override;
    QString askSaveFile(QWidget* parent, const QString& filter, const QString& suggestedName) override;
};

} // namespace rig
