#pragma once

#include "app/pages/rigged_today/rigged_today_view.h"

#include <QWidget>

class QCheckBox;
class QLabel;

namespace rig {

// Above a record that is typed in from paper: of which day it is, and who types the second column.
class PaperBanner : public QWidget
{
    Q_OBJECT

public:
    explicit PaperBanner(QWidget* parent = nullptr);

    // Hidden where there is no record to work on, and where none is from paper.
    void display(const RiggedTodayView& view, const RiggingSession& session);
    // As a press of the box, where it is offered.
    void press();

signals:
    void secondTypesChosen(bool secondTypes);

private:
    QLabel* m_text = nullptr;
    QCheckBox* m_secondTypes = nullptr;
};

} // namespace rig
