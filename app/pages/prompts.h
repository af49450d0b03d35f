#pragma once

#include <QString>
#include <QStringList>

#include <functional>

class QWidget;

namespace rig {

// Everything a page asks the user beside its own controls; scripted in tests. Each call waits for the answer,
// but askText().
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
    // `take` is called once, with a text that is trimmed and not blank, while `parent` lives; never when the
    // user turned away. It is done before the next key is given to anybody, which no call that waits could
    // promise: the keys that are typed ahead come in one go, behind the answer and before the call returns.
    // `offered` are answers that one press gives; what was typed besides is put behind the one pressed.
    virtual void askText(QWidget* parent, const QString& title, const QString& question,
                         const QStringList& offered, std::function<void(const QString&)> take) = 0;
    // A path, or an empty string when the user turned away.
    virtual QString askNewFile(QWidget* parent, const QString& filter) = 0;
    virtual QString askOpenFile(QWidget* parent, const QString& filter) = 0;
    // Where to write something that can be made again at any time; asks before it takes another file's place.
    virtual QString askSaveFile(QWidget* parent, const QString& filter, const QString& suggestedName) = 0;
};

// The real ones.
class WindowPrompts : public Prompts
{
public:
    void tell(QWidget* parent, const QString& text) override;
    bool confirm(QWidget* parent, const QString& title, const QString& question,
                 const QString& yesText) override;
    void askText(QWidget* parent, const QString& title, const QString& question, const QStringList& offered,
                 std::function<void(const QString&)> take) override;
    QString askNewFile(QWidget* parent, const QString& filter) override;
    QString askOpenFile(QWidget* parent, const QString& filter) override;
    QString askSaveFile(QWidget* parent, const QString& filter, const QString& suggestedName) override;
};

} // namespace rig
