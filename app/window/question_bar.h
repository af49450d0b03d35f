#pragma once

#include "app/pages/questions/questions_view.h"
#include "app/window/marked_bar.h"

#include <QStringList>

namespace rig {

// The line below the top bar: shown on every page for as long as the airframe in view has open questions. It
// says as many of them as fit.
class QuestionBar : public AsideBar
{
    Q_OBJECT

public:
    explicit QuestionBar(QWidget* parent = nullptr);

    // `open`: as the page of the questions tells them; a stop is told to whoever works.
    void display(const QString& registration, const std::vector<OpenQuestion>& open);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void fit();

    QStringList m_sentences; // the longest first
};

} // namespace rig
